import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow, reserveShare } from './quantities.ts'

/** Flow that a recirculation valve must pass so that a compressor stays clear of surge while the throttle is shut. */
export const about = {
  name: 'Flow past a shut throttle',
  in: { surge: role(gasFlow, 'm_s', 'Flow at surge, all turbochargers'), reserve: reserveShare, engine: role(gasFlow, 'm_e', 'Flow that the engine still takes') },
  out: role(gasFlow, 'm_v', 'Flow the valve must pass'),
  equation: '(surge * (1 + reserve) - engine + abs(surge * (1 + reserve) - engine)) / 2',
  source: ['derived', 'what the compressor must pass less what the engine takes, where that is more than nothing'],
} as const satisfies About

export const recirculationFlow = formula<typeof about>('recirculation-flow', {}, ({ surge, reserve, engine }) => Math.max(0, surge * (1 + reserve) - engine))
