import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { at } from './point.ts'
import { actuatorLever, diaphragmAreaOf, firstMovement, fullTravel, wastegateDiameter } from './fields.ts'
import { exhaustForceOnRod } from './exhaustForceOnRod.ts'
import { pressureUnderExhaust } from './pressureUnderExhaust.ts'
import { travelPressure } from './travelPressure.ts'

export default calculation({
  id: 'actuator-opens', title: 'What opens the wastegate', theme: 'turbo', article: 'wastegate-spring-and-two-port-actuators', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'At what boost has the actuator, with all of it on the opening side, opened the wastegate as far as this point asks?',
  in: {
    firstMovement, fullTravel, diaphragmArea: diaphragmAreaOf, diameter: wastegateDiameter, leverRatio: actuatorLever,
    inlet: at.inletPressureAsked, outlet: at.outletPressureAsked, flow: at.wastegateAsked, capacity: at.wastegateCapacity,
  },
  out: { opens: at.actuatorOpens },
  curve: ['fullTravel', 'opens'],
  answer({ firstMovement: first, fullTravel: full, diaphragmArea, diameter, leverRatio, inlet, outlet, flow, capacity }) {
    // What a solve leaves over of nothing is still nothing: a tenth of a gram a second counts as shut.
    if (flow < 1e-4) throw new NoAnswer('wastegate', 'The wastegate stays shut here: nothing asks the actuator to open it.')
    if (capacity <= 0) throw new NoAnswer('wastegate', 'Without more pressure before the turbine than behind it nothing flows through a wastegate.')
    const bench = travelPressure({ firstMovement: first, fullTravel: full, flow, capacity })
    return { opens: pressureUnderExhaust({ bench, exhaustForce: exhaustForceOnRod({ inlet, outlet, diameter, leverRatio }), diaphragmArea }) }
  },
  says: () => 'To let {flow} past the turbine the actuator needs {opens}: boost cannot be held lower than that.',
  leavesOut: 'Friction, pulses that lift the valve for a moment, and how much an open valve relieves the exhaust force.',
})
