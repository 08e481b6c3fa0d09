import { heatFlow, sustainedShareOf } from '../cooling/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'

/** Heat that goes into the oil over minutes, not over one pull. */
export const about = {
  name: 'Sustained heat to the oil',
  in: { heat: role(heatFlow, 'Q_o', 'Heat to the oil at full load'), share: sustainedShareOf },
  out: heatFlow,
  equation: 'heat * share',
  source: ['derived', 'steady temperature follows the mean heat'],
  notes: 'Bearing friction is part of it: what the film heats, the oil carries.',
} as const satisfies About

export const sustainedOilHeat = formula<typeof about>('sustained-oil-heat', {}, ({ heat, share }) => heat * share)
