import { calculation } from '../calculation/calculation.ts'
import { at } from './point.ts'
import { actuatorLever, controlShare, diaphragmAreaOf, firstMovement, fullTravel, wastegateDiameter } from './fields.ts'
import { boostWithOnePort } from './boostWithOnePort.ts'
import { exhaustForceOnRod } from './exhaustForceOnRod.ts'
import { pressureUnderExhaust } from './pressureUnderExhaust.ts'

export default calculation({
  id: 'actuator-holds', title: 'What the actuator holds', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'Up to what boost can the actuator keep the wastegate shut, and at what boost is it fully open?',
  in: {
    firstMovement, fullTravel, diaphragmArea: diaphragmAreaOf, diameter: wastegateDiameter, leverRatio: actuatorLever, kept: controlShare,
    inlet: at.turbineInletPressure, outlet: at.turbineOutletPressure,
  },
  out: { held: at.actuatorHeld, fullBoost: at.actuatorFullBoost },
  curve: ['inlet', 'held'],
  answer({ firstMovement: first, fullTravel: full, diaphragmArea, diameter, leverRatio, kept, inlet, outlet }) {
    const exhaustForce = exhaustForceOnRod({ inlet, outlet, diameter, leverRatio })
    const held = boostWithOnePort({ pressure: pressureUnderExhaust({ bench: first, exhaustForce, diaphragmArea }), kept })
    return { held, fullBoost: pressureUnderExhaust({ bench: full, exhaustForce, diaphragmArea }) }
  },
  says: ({ held }) => held <= 0
    ? 'Exhaust pressure alone pushes the valve open: this actuator holds no boost here.'
    : 'With the control valve at its highest setting the wastegate stays shut up to {held}. With all the boost on the actuator it is fully open at {fullBoost}.',
  leavesOut: 'Friction, pulses that lift the valve for a moment, and the time the control valve takes.',
})
