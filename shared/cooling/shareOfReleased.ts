import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { heatFlow, heatShareOf } from './quantities.ts'

/** Heat of one way as a share of what is released: the share a logged point puts in the sheet. */
export const about = {
  name: 'Share of the released heat',
  in: { heat: heatFlow, released: role(heatFlow, 'Q_r', 'Heat released') },
  out: heatShareOf,
  equation: 'heat / released',
  source: ['definition', 'share'],
} as const satisfies About

export const shareOfReleased = formula<typeof about>('share-of-released', {}, ({ heat, released }) => heat / released)
