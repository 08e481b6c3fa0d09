import { calculation, free } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { at } from './point.ts'
import { actuatorLever, actuatorTravel, controlShare, diaphragmAreaOf, springPreloadOf, springRateOf, wastegateDiameter } from './fields.ts'
import { boostWithOnePort } from './boostWithOnePort.ts'
import { boostWithTwoPorts } from './boostWithTwoPorts.ts'
import { crackingPressure } from './crackingPressure.ts'
import { exhaustForceOnRod } from './exhaustForceOnRod.ts'
import { fullOpenPressure } from './fullOpenPressure.ts'
import { actuatorPressure, keptShare, rodForce } from './quantities.ts'

export default calculation({
  id: 'actuator-pressures', title: 'Wastegate actuator', theme: 'turbo', article: 'wastegate-spring-and-two-port-actuators', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'At what boost does the wastegate begin to open, and when is it fully open?',
  in: {
    preload: springPreloadOf, rate: springRateOf, diaphragmArea: diaphragmAreaOf, travel: actuatorTravel, leverRatio: actuatorLever, diameter: wastegateDiameter,
    inlet: at.turbineInletPressure, outlet: at.turbineOutletPressure, kept: controlShare,
    closing: free(keptShare, 0.6, 'Share of boost on the closing side, two ports'), areaRatio: free(keptShare, 0.93, 'Closing area over opening area'),
  },
  out: { exhaustForce: rodForce, cracking: role(actuatorPressure, 'p_c', 'Pressure of first movement'), fullyOpen: role(actuatorPressure, 'p_f', 'Pressure of full travel'), onePort: role(actuatorPressure, 'p_1p', 'Most boost with one port'), twoPorts: role(actuatorPressure, 'p_2p', 'Most boost with two ports') },
  curve: ['inlet', 'cracking'],
  answer({ preload, rate, diaphragmArea, travel, leverRatio, diameter, inlet, outlet, kept, closing, areaRatio }) {
    const exhaustForce = exhaustForceOnRod({ inlet, outlet, diameter, leverRatio })
    const cracking = crackingPressure({ preload, exhaustForce, diaphragmArea })
    return {
      exhaustForce, cracking, fullyOpen: fullOpenPressure({ preload, rate, travel, exhaustForce, diaphragmArea }),
      onePort: boostWithOnePort({ pressure: cracking, kept }), twoPorts: boostWithTwoPorts({ pressure: cracking, closing, areaRatio }),
    }
  },
  says: ({ cracking }) => cracking <= 0
    ? 'Exhaust pressure alone pushes the valve open against this spring: it takes a stiffer one, a smaller valve, or boost on the closing side.'
    : 'With all the boost on it the actuator begins to open at {cracking} and is fully open at {fullyOpen}. The control valve can raise the first to {onePort} with one port, to {twoPorts} with two.',
  leavesOut: 'Friction, pulses that lift the valve for a moment, and the time the control valve takes.',
})
