import { formula, type About } from '../formula/formula.ts'
import { frictionFactor } from '../fuel/quantities.ts'
import { tubeReynolds } from './quantities.ts'

/** Darcy friction factor of a smooth tube in turbulent flow. */
export const about = {
  name: 'Friction factor of a smooth tube',
  in: { reynolds: tubeReynolds },
  out: frictionFactor,
  equation: '(0.79 * log(reynolds) - 1.64)^(-2)',
  source: ['incropera', 'equation 8.21, Petukhov'],
  sample: { reynolds: [3000, 100000] },
} as const satisfies About

export const petukhovFriction = formula<typeof about>('petukhov-friction', { reynolds: [3000, 5e6] }, ({ reynolds }) => (0.79 * Math.log(reynolds) - 1.64) ** -2)
