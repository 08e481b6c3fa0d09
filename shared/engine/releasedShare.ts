import { formula, type About } from '../formula/formula.ts'
import { lambda, releasedShareOf } from './quantities.ts'

/** Share of the fuel's heating value that the air there is can release. */
export const about = {
  name: 'Share of the heating value released',
  in: { lambda },
  out: releasedShareOf,
  equation: 'min(1, lambda)',
  source: ['derived', 'oxygen limits the heat: rich of stoichiometric, heat per mass of air stays as it is; compare Heywood 1988, figure 3-9'],
  notes: 'Source states no range; the true share rich of stoichiometric lies within a few per cent of this, and lean of it a little below one. There is a kink at lambda one.',
} as const satisfies About

export const releasedShare = formula<typeof about>('released-share', {}, ({ lambda: ratio }) => Math.min(1, ratio))
