import { formula, type About } from '../formula/formula.ts'
import { capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'


/** Streams run the same way: outlets approach one temperature. */
export const about = {
  name: 'Effectiveness in parallel flow',
  in: { units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  equation: '(1 - exp(-units * (1 + ratio))) / (1 + ratio)',
  source: ['kays-london', 'chapter 2; Incropera table 11.3'],
  sample: { units: [0.1, 10] },
} as const satisfies About

export const effectivenessParallel = formula<typeof about>('effectiveness-parallel', {}, ({ units, ratio }) => -Math.expm1(-units * (1 + ratio)) / (1 + ratio))
