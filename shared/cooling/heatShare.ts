import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { heatFlow, heatShareOf } from './quantities.ts'

/** Heat that goes one way, as a stated share of the heat released. */
export const about = {
  name: 'Heat by its share',
  in: { power: role(heatFlow, 'Q_r', 'Heat released'), share: heatShareOf },
  out: heatFlow,
  equation: 'power * share',
  source: ['definition', 'share of the released heat'],
  notes: 'No published split for a rotary was found: the shares are common practice, no source, until one logged point replaces them.',
} as const satisfies About

export const heatShare = formula<typeof about>('heat-share', {}, ({ power, share }) => power * share)
