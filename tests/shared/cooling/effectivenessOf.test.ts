import { expect, test } from 'vitest'
import { effectivenessCounter } from '@trochoid/compute/cooling/effectivenessCounter.ts'
import { effectivenessCrossStrongerMixed } from '@trochoid/compute/cooling/effectivenessCrossStrongerMixed.ts'
import { effectivenessCrossUnmixed } from '@trochoid/compute/cooling/effectivenessCrossUnmixed.ts'
import { effectivenessCrossWeakerMixed } from '@trochoid/compute/cooling/effectivenessCrossWeakerMixed.ts'
import { effectivenessOf } from '@trochoid/compute/cooling/effectivenessOf.ts'
import { effectivenessParallel } from '@trochoid/compute/cooling/effectivenessParallel.ts'

test('takes the relation of each arrangement', () => {
  const x = { units: 2.2, ratio: 0.7 }
  expect(effectivenessOf({ arrangement: 'counter', ...x })).toBe(effectivenessCounter(x))
  expect(effectivenessOf({ arrangement: 'parallel', ...x })).toBe(effectivenessParallel(x))
  expect(effectivenessOf({ arrangement: 'crossUnmixed', ...x })).toBe(effectivenessCrossUnmixed(x))
  expect(effectivenessOf({ arrangement: 'weakerMixed', ...x })).toBe(effectivenessCrossWeakerMixed(x))
  expect(effectivenessOf({ arrangement: 'strongerMixed', ...x })).toBe(effectivenessCrossStrongerMixed(x))
  expect(new Set(['counter', 'parallel', 'crossUnmixed', 'weakerMixed', 'strongerMixed'].map((arrangement) => effectivenessOf({ arrangement: arrangement as 'counter', ...x }))).size).toBe(5)
})
