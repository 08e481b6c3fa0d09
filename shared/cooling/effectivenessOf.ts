import { formula, type About } from '../formula/formula.ts'
import { arrangement, capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'
import { effectivenessCounter } from './effectivenessCounter.ts'
import { effectivenessCrossStrongerMixed } from './effectivenessCrossStrongerMixed.ts'
import { effectivenessCrossUnmixed } from './effectivenessCrossUnmixed.ts'
import { effectivenessCrossWeakerMixed } from './effectivenessCrossWeakerMixed.ts'
import { effectivenessParallel } from './effectivenessParallel.ts'

/** Effectiveness of a cooler of a given arrangement. */
export const about = {
  name: 'Effectiveness by arrangement',
  in: { arrangement, units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  steps: ['Take the relation of the arrangement: counter, parallel, cross with both streams unmixed, cross with one of them mixed.'],
  source: ['kays-london', 'chapter 2'],
} as const satisfies About

export const effectivenessOf = formula<typeof about>('effectiveness-of', {}, ({ arrangement, units, ratio }) => {
  if (arrangement === 'counter') return effectivenessCounter({ units, ratio })
  if (arrangement === 'parallel') return effectivenessParallel({ units, ratio })
  if (arrangement === 'weakerMixed') return effectivenessCrossWeakerMixed({ units, ratio })
  if (arrangement === 'strongerMixed') return effectivenessCrossStrongerMixed({ units, ratio })
  return effectivenessCrossUnmixed({ units, ratio })
})
