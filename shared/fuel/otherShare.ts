import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { stageShare } from './quantities.ts'

/** What the other stage gives. */
export const about = {
  name: 'Share of the other stage',
  in: { share: stageShare },
  out: role(stageShare, 'x_1', 'Share of the other stage'),
  equation: '1 - share',
  source: ['definition', 'two shares of a whole'],
} as const satisfies About

export const otherShare = formula<typeof about>('other-share', {}, ({ share }) => 1 - share)
