import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { premixShare, tankVolume } from './quantities.ts'

/** Fuel to take from the first of two containers so that both together have a wanted oil share. */
export const about = {
  name: 'Part of the first container',
  in: {
    total: role(tankVolume, 'V', 'Fuel wanted in all'), wanted: role(premixShare, 'x_o', 'Wanted oil share'), first: role(premixShare, 'x_1', 'Oil share of the first'), second: role(premixShare, 'x_2', 'Oil share of the second'),
  },
  out: role(tankVolume, 'V_1', 'From the first container'),
  equation: 'total * (wanted - second) / (first - second)',
  sample: { first: [0.02, 0.05], second: [0, 0.005], wanted: [0.005, 0.02] },
  source: ['derived', 'conservation of fuel and of oil; shares are of the fuel’s volume, the oil itself not counted'],
} as const satisfies About

export const firstCanVolume = formula<typeof about>('first-can-volume', {}, ({ total, wanted, first, second }) => (total * (wanted - second)) / (first - second))
