import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { crankingTemperature, oilTemperature, startReserve } from './quantities.ts'

/** How much warmer it is than a limit. */
export const about = {
  name: 'Reserve over a limit',
  in: { temperature: role(oilTemperature, 'T_s', 'Oil temperature at the start'), limit: role(crankingTemperature, 'T_l', 'Limit') },
  out: startReserve,
  equation: 'temperature - limit',
  source: ['definition', 'a difference'],
} as const satisfies About

export const warmerThan = formula<typeof about>('warmer-than', {}, ({ temperature, limit }) => temperature - limit)
