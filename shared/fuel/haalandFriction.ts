import { formula, type About } from '../formula/formula.ts'
import { frictionFactor, pipeReynolds, relativeRoughness } from './quantities.ts'

/** Darcy friction factor of turbulent flow, explicit, within 2 % of Colebrook. */
export const about = {
  name: 'Friction factor by Haaland',
  in: { reynolds: pipeReynolds, relativeRoughness },
  out: frictionFactor,
  equation: '1 / (1.8 * log10((relativeRoughness / 3.7)^1.11 + 6.9 / reynolds))^2',
  source: ['haaland-1983', 'the explicit formula'],
} as const satisfies About

export const haalandFriction = formula<typeof about>('haaland-friction', { reynolds: [4000, 1e8], relativeRoughness: [0, 0.05] }, ({ reynolds, relativeRoughness: rough }) =>
  1 / (1.8 * Math.log10((rough / 3.7) ** 1.11 + 6.9 / reynolds)) ** 2)
