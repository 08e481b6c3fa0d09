import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, heatFlow, surfaceTemperatureOf } from './quantities.ts'

/** Temperature at which the hot stream leaves. */
export const about = {
  name: 'Outlet of the hot stream',
  in: { inlet: role(surfaceTemperatureOf, 'T_hi', 'Hot stream at its inlet'), heat: heatFlow, rate: role(capacityRateOf, 'C_h', 'Capacity rate of the hot stream') },
  out: role(surfaceTemperatureOf, 'T_ho', 'Hot stream at its outlet'),
  equation: 'inlet - heat / rate',
  source: ['derived', 'first law for one stream'],
  sample: { heat: [100, 1e4], rate: [100, 25000] },
} as const satisfies About

export const cooledOutlet = formula<typeof about>('cooled-outlet', {}, ({ inlet, heat, rate }) => inlet - heat / rate)
