import { formula, type About } from '../formula/formula.ts'
import { mainLoadShare, mainOffset, mainSpacing } from './quantities.ts'

/** Share of a rotor's load that the main bearing beside it carries: a beam on two supports. */
export const about = {
  name: 'Share of a rotor load on the nearer main bearing',
  in: { offset: mainOffset, spacing: mainSpacing },
  out: mainLoadShare,
  equation: '(spacing - offset) / spacing',
  sample: { spacing: [0.25, 0.8] },
  source: ['derived', 'moments about the other bearing; the shaft taken as stiff'],
} as const satisfies About

export const mainShareOf = formula<typeof about>('main-share-of', {}, ({ offset, spacing }) => (spacing - offset) / spacing)
