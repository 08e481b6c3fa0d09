import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airPressure, compressionExponent, compressionRatio, facePressure } from './quantities.ts'

/** Gauge reading of a face that does not leak. */
export const about = {
  name: 'Compression without leakage',
  in: { outside: airPressure, ratio: compressionRatio, exponent: compressionExponent },
  out: role(facePressure, 'p_i', 'Reading without leakage'),
  equation: 'outside * ratio^exponent - outside',
  source: ['heywood-1988', 'section 5.4, compression along p V^n constant; a gauge reads above outside air'],
  notes: 'Throttle open. Late port closing and the volume of the gauge take from it.',
} as const satisfies About

export const idealFacePressure = formula<typeof about>('ideal-face-pressure', {}, ({ outside, ratio, exponent }) => outside * ratio ** exponent - outside)
