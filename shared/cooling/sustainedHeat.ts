import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { heatFlow, sustainedShareOf } from './quantities.ts'


/** Heat that must be carried away for minutes on end, as a share of the heat at full load. */
export const about = {
  name: 'Sustained heat',
  in: { full: role(heatFlow, 'Q_f', 'Heat at full load'), share: sustainedShareOf },
  out: heatFlow,
  equation: 'full * share',
  source: ['common-practice', 'average over a lap against full load'],
} as const satisfies About

export const sustainedHeat = formula<typeof about>('sustained-heat', {}, ({ full, share }) => full * share)
