import { heatFlow } from '../cooling/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelVolumeFlow } from './quantities.ts'

/** Heat that comes back to the tank: the part that the burned fuel does not carry away. */
export const about = {
  name: 'Heat that returns to the tank',
  in: { heat: heatFlow, returned: role(fuelVolumeFlow, 'Q_r', 'Flow returned'), pumped: role(fuelVolumeFlow, 'Q_p', 'Flow pumped') },
  out: role(heatFlow, 'Q_t', 'Heat into the tank'),
  equation: 'heat * returned / pumped',
  sample: { pumped: [1e-5, 2e-4] },
  source: ['derived', 'burned fuel leaves with its share of the heat'],
} as const satisfies About

export const heatKept = formula<typeof about>('heat-kept', {}, ({ heat, returned, pumped }) => (heat * returned) / pumped)
