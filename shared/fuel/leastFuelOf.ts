import { formula, type About } from '../formula/formula.ts'
import { deadTime, fuelPerCharge, injectorMassFlow, smallestPulse } from './quantities.ts'

/** The least fuel a stage can give one charge and repeat it. */
export const about = {
  name: 'Least repeatable fuel of a stage',
  in: { smallest: smallestPulse, deadTime, flow: injectorMassFlow },
  out: fuelPerCharge,
  equation: '(smallest - deadTime) * flow',
  source: ['sae-j1832', 'fuel per pulse is a straight line over pulse width, shifted by the dead time'],
  notes: 'Source states no range. A smallest pulse below the dead time would give less than nothing: one of the two is then wrong.',
} as const satisfies About

export const leastFuelOf = formula<typeof about>('least-fuel-of', {}, ({ smallest, deadTime: dead, flow }) => (smallest - dead) * flow)
