import { calculation } from '../calculation/calculation.ts'
import { at } from './point.ts'
import { actuatorLever, controlShare, diaphragmAreaOf, firstMovement, wastegateDiameter } from './fields.ts'
import { boostWithOnePort } from './boostWithOnePort.ts'
import { exhaustForceOnRod } from './exhaustForceOnRod.ts'
import { pressureUnderExhaust } from './pressureUnderExhaust.ts'

export default calculation({
  id: 'actuator-holds', title: 'What the actuator holds', theme: 'turbo', article: 'wastegate-spring-and-two-port-actuators', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'Up to what boost can the actuator keep the wastegate shut?',
  in: {
    firstMovement, diaphragmArea: diaphragmAreaOf, diameter: wastegateDiameter, leverRatio: actuatorLever, kept: controlShare,
    inlet: at.inletPressureAsked, outlet: at.outletPressureAsked,
  },
  out: { held: at.actuatorHeld },
  curve: ['inlet', 'held'],
  answer({ firstMovement: first, diaphragmArea, diameter, leverRatio, kept, inlet, outlet }) {
    const exhaustForce = exhaustForceOnRod({ inlet, outlet, diameter, leverRatio })
    return { held: boostWithOnePort({ pressure: pressureUnderExhaust({ bench: first, exhaustForce, diaphragmArea }), kept }) }
  },
  says: ({ held }) => held <= 0
    ? 'Exhaust pressure alone pushes the valve open: this actuator holds no boost here.'
    : 'With the control valve at its highest setting the wastegate stays shut up to {held}.',
  leavesOut: 'Friction, pulses that lift the valve for a moment, and the time the control valve takes.',
})
