import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPerCharge, fuelSpread, wallShare, wallTime } from './quantities.ts'

/** Time after a step until what arrives lacks no more than a share of what was meant. */
export const about = {
  name: 'Time until the mixture is back',
  in: {
    before: role(fuelPerCharge, 'm_0', 'Fuel per charge before the step'), after: role(fuelPerCharge, 'm_1', 'Fuel per charge injected after it'),
    wall: wallShare, settling: wallTime, lack: role(fuelSpread, 's', 'Lack of fuel that is let pass'),
  },
  out: role(wallTime, 't_s', 'Time until the lack has passed'),
  equation: 'settling * max(0, log(wall * (after - before) / (after * lack)))',
  sample: { before: [1e-6, 40e-6], after: [50e-6, 300e-6], wall: [0.05, 0.9], lack: [0.005, 0.1] },
  source: ['derived', 'the exponential of the wall film solved for time'],
} as const satisfies About

export const wallSettled = formula<typeof about>('wall-settled', {}, ({ before, after, wall, settling, lack }) => {
  const ratio = (wall * (after - before)) / (after * lack)
  return ratio > 1 ? settling * Math.log(ratio) : 0
})
