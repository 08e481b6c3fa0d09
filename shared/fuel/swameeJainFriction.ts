import { formula, type About } from '../formula/formula.ts'
import { frictionFactor, pipeReynolds, relativeRoughness } from './quantities.ts'

/** Darcy friction factor of turbulent flow, explicit, within 1 % of Colebrook over most of its range. */
export const about = {
  name: 'Friction factor by Swamee and Jain',
  in: { reynolds: pipeReynolds, relativeRoughness },
  out: frictionFactor,
  equation: '0.25 / log10(relativeRoughness / 3.7 + (6.97 / reynolds)^0.9)^2',
  source: ['swamee-jain-1976', 'with the smooth term written (6.97/Re)^0.9, which is 5.74/Re^0.9'],
} as const satisfies About

export const swameeJainFriction = formula<typeof about>('swamee-jain-friction', { reynolds: [5000, 1e8], relativeRoughness: [1e-6, 0.05] }, ({ reynolds, relativeRoughness: rough }) =>
  0.25 / Math.log10(rough / 3.7 + (6.97 / reynolds) ** 0.9) ** 2)
