import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { capacityRateOf, heatFlow, surfaceTemperatureOf } from './quantities.ts'

/** Temperature at which the cold stream leaves. */
export const about = {
  name: 'Outlet of the cold stream',
  in: { inlet: role(surfaceTemperatureOf, 'T_ci', 'Cold stream at its inlet'), heat: heatFlow, rate: role(capacityRateOf, 'C_c', 'Capacity rate of the cold stream') },
  out: role(surfaceTemperatureOf, 'T_co', 'Cold stream at its outlet'),
  equation: 'inlet + heat / rate',
  source: ['derived', 'first law for one stream'],
} as const satisfies About

export const warmedOutlet = formula<typeof about>('warmed-outlet', {}, ({ inlet, heat, rate }) => inlet + heat / rate)
