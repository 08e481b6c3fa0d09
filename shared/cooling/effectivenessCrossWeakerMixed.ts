import { formula, type About } from '../formula/formula.ts'
import { capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'


/** Cross flow, the weaker stream mixed across its path, the stronger kept apart in channels. */
export const about = {
  name: 'Effectiveness in cross flow, weaker stream mixed',
  in: { units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  equation: '1 - exp(-(1 - exp(-ratio * units)) / ratio)',
  source: ['kays-london', 'chapter 2; Incropera table 11.3'],
  notes: 'Where one stream does not change temperature, its limit 1 − exp(−NTU).',
  sample: { ratio: [0.02, 1], units: [0.1, 10] },
} as const satisfies About

export const effectivenessCrossWeakerMixed = formula<typeof about>('effectiveness-cross-weaker-mixed', {}, ({ units, ratio }) => -Math.expm1(ratio === 0 ? -units : Math.expm1(-ratio * units) / ratio))
