import { formula, type About } from '../formula/formula.ts'
import { airPressure, humidity } from '../engine/quantities.ts'
import { enhancement, saturation, vapourShareOfAir } from './quantities.ts'

/** Mole share of water vapour in real moist air. */
export const about = {
  name: 'Share of water vapour from relative humidity',
  in: { humidity, enhancement, saturation, pressure: airPressure },
  out: vapourShareOfAir,
  equation: 'humidity * enhancement * saturation / pressure',
  source: ['cipm-2007', 'appendix A.1.2'],
  notes: 'Without the enhancement factor it is the ideal mixture.',
  sample: { saturation: [30, 12e3] },
} as const satisfies About

export const saturatedShare = formula<typeof about>('saturated-share', {}, ({ humidity: share, enhancement: factor, saturation: most, pressure }) => (share * factor * most) / pressure)
