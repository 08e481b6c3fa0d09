import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { hotGrowth } from './quantities.ts'

/** How far the end of a flange slides over what it is bolted to, when both grow from the middle. */
export const about = {
  name: 'Slip at the end of a flange',
  in: { flange: role(hotGrowth, 'Δl_f', 'Growth of the flange'), engine: role(hotGrowth, 'Δl_e', 'Growth of the engine beneath it') },
  out: role(hotGrowth, 's_f', 'Slip at the outermost stud'),
  equation: '(flange - engine) / 2',
  source: ['derived', 'difference of two growths, half of it at either end'],
} as const satisfies About

export const slipOfFlange = formula<typeof about>('slip-of-flange', {}, ({ flange, engine }) => (flange - engine) / 2)
