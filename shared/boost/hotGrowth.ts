import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coldTemperature, hotExpansion, hotGrowth as growth, hotLength, metalTemperature } from './quantities.ts'

/** How much longer a part is hot than cold. */
export const about = {
  name: 'Growth of a hot part',
  in: { length: hotLength, expansion: hotExpansion, hot: metalTemperature, cold: role(coldTemperature, 'T_c', 'Temperature at which it was fitted') },
  out: growth,
  equation: 'length * expansion * (hot - cold)',
  source: ['definition', 'of the mean coefficient of expansion'],
} as const satisfies About

export const hotGrowth = formula<typeof about>('hot-growth', {}, ({ length, expansion, hot, cold }) => length * expansion * (hot - cold))
