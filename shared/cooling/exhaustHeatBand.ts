import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn } from '../engine/quantities.ts'
import { heatBand, heatFlow } from './quantities.ts'

/** Low and high end of the exhaust heat: the model's figure less and plus a share of the fuel's energy. */
export const about = {
  name: 'Band of the exhaust heat',
  in: { heat: role(heatFlow, 'Q_x', 'Heat in the exhaust'), fuelPower: fuelPowerIn, band: heatBand },
  out: { low: role(heatFlow, 'Q_xl', 'Heat in the exhaust, low'), high: role(heatFlow, 'Q_xh', 'Heat in the exhaust, high') },
  equation: { low: 'heat - band * fuelPower', high: 'heat + band * fuelPower' },
  source: ['common-practice', 'the split is not known better than this'],
} as const satisfies About

export const exhaustHeatBand = formula<typeof about>('exhaust-heat-band', {}, ({ heat, fuelPower, band }) => ({ low: heat - band * fuelPower, high: heat + band * fuelPower }))
