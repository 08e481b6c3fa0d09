import { formula, type About } from '../formula/formula.ts'
import { capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'


/** Cross flow, the stronger stream mixed across its path, the weaker kept apart in channels. */
export const about = {
  name: 'Effectiveness in cross flow, stronger stream mixed',
  in: { units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  equation: '(1 - exp(-ratio * (1 - exp(-units)))) / ratio',
  source: ['kays-london', 'chapter 2; Incropera table 11.3'],
  notes: 'Where one stream does not change temperature, its limit 1 − exp(−NTU).',
  sample: { ratio: [0.02, 1], units: [0.1, 10] },
} as const satisfies About

export const effectivenessCrossStrongerMixed = formula<typeof about>('effectiveness-cross-stronger-mixed', {}, ({ units, ratio }) => {
  const alone = -Math.expm1(-units)
  return ratio === 0 ? alone : -Math.expm1(-ratio * alone) / ratio
})
