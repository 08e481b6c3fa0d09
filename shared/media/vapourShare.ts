import { formula, type About } from '../formula/formula.ts'
import { gasPressure } from '../boost/quantities.ts'
import { vapourPressureOfWater, vapourShareOfAir } from './quantities.ts'

/** Mole share of water vapour: the same outside, in the compressor and in the manifold, as long as nothing condenses. */
export const about = {
  name: 'Share of water vapour in the air',
  in: { vapourPressure: vapourPressureOfWater, pressure: gasPressure },
  out: vapourShareOfAir,
  equation: 'vapourPressure / pressure',
  source: ['derived', 'Dalton’s law of an ideal mixture'],
  notes: 'In a cold charge cooler on a damp day some vapour condenses; the engine then gets a little more dry air than this says.',
  sample: { vapourPressure: [0, 8e3] },
} as const satisfies About

export const vapourShare = formula<typeof about>('vapour-share', {}, ({ vapourPressure, pressure }) => vapourPressure / pressure)
