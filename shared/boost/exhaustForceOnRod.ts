import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasPressure, leverRatio, rodForce, valveDiameter } from './quantities.ts'

/** Force with which exhaust pressure on the wastegate pushes the actuator’s rod towards open. */
export const about = {
  name: 'Exhaust force on the actuator rod',
  in: { inlet: role(gasPressure, 'p_3', 'Pressure before the turbine'), outlet: role(gasPressure, 'p_4', 'Pressure after the turbine'), diameter: valveDiameter, leverRatio },
  out: role(rodForce, 'F_x', 'Exhaust force on the rod'),
  equation: '(inlet - outlet) * pi * diameter^2 / 4 * leverRatio',
  source: ['derived', 'pressure difference on the shut valve’s seat, carried to the rod by the lever'],
  notes: 'The valve opens with the exhaust flow, as nearly all do. Mean pressure: pulses push harder for a moment, which is why a weak spring chatters.',
} as const satisfies About

export const exhaustForceOnRod = formula<typeof about>('exhaust-force-on-rod', {}, ({ inlet, outlet, diameter, leverRatio: lever }) => (((inlet - outlet) * Math.PI * diameter * diameter) / 4) * lever)
