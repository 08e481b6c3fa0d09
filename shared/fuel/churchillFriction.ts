import { formula, type About } from '../formula/formula.ts'
import { frictionFactor, pipeReynolds, relativeRoughness } from './quantities.ts'

/** Darcy friction factor in one equation for laminar, transition and turbulent flow. */
export const about = {
  name: 'Friction factor by Churchill',
  in: { reynolds: pipeReynolds, relativeRoughness },
  out: frictionFactor,
  equation: '8 * ((8 / reynolds)^12 + ((-2.457 * log((7 / reynolds)^0.9 + 0.27 * relativeRoughness))^16 + (37530 / reynolds)^16)^(-1.5))^(1 / 12)',
  source: ['churchill-1977', 'equation 18'],
  notes: 'Source states no range: made to span every flow. Near Reynolds numbers of 2,300 to 4,000 real flow may be either kind.',
} as const satisfies About

export const churchillFriction = formula<typeof about>('churchill-friction', {}, ({ reynolds, relativeRoughness: rough }) => {
  const a = (-2.457 * Math.log((7 / reynolds) ** 0.9 + 0.27 * rough)) ** 16
  const b = (37530 / reynolds) ** 16
  return 8 * ((8 / reynolds) ** 12 + (a + b) ** -1.5) ** (1 / 12)
})
