import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { traced } from '@trochoid/compute/formula/trace.ts'
import { effectivenessOf } from '@trochoid/compute/cooling/effectivenessOf.ts'
import { transferUnitsFor } from '@trochoid/compute/cooling/transferUnitsFor.ts'

const arrangements = ['crossUnmixed', 'counter', 'parallel', 'weakerMixed', 'strongerMixed'] as const
test('there and back, in every arrangement', () => {
  fc.assert(fc.property(fc.constantFrom(...arrangements), fc.double({ min: 0.05, max: 6, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (arrangement, units, ratio) => {
    const effectiveness = effectivenessOf({ arrangement, units, ratio })
    const back = transferUnitsFor({ arrangement, effectiveness, ratio })
    expect(effectivenessOf({ arrangement, units: back, ratio })).toBeCloseTo(effectiveness, 10)
  }))
})
test('finds large coolers too', () => {
  expect(transferUnitsFor({ arrangement: 'counter', effectiveness: 40 / 41, ratio: 1 })).toBeCloseTo(40, 8)
  expect(transferUnitsFor({ arrangement: 'counter', effectiveness: 8 / 9, ratio: 1 })).toBeCloseTo(8, 9)
})
test('nothing asked needs nothing', () => {
  expect(transferUnitsFor({ arrangement: 'counter', effectiveness: 0, ratio: 0.5 })).toBe(0)
  expect(transferUnitsFor({ arrangement: 'counter', effectiveness: -0.2, ratio: 0.5 })).toBe(0)
})
test('says so where no cooler of the arrangement does it', () => {
  const ask = () => transferUnitsFor({ arrangement: 'parallel', effectiveness: 0.6, ratio: 1 })
  expect(ask).toThrow(NoAnswer)
  expect(ask).toThrow('exchanges 60 %')
})
test('the trace holds the root and not the search', () => {
  const { result, trace } = traced(() => transferUnitsFor({ arrangement: 'crossUnmixed', effectiveness: 0.6, ratio: 0.5 }))
  expect(trace.map((e) => e.id)).toEqual(['root', 'transfer-units-for'])
  expect(trace[0]).toMatchObject({ value: result, name: 'transfer units' })
  expect(Math.abs((trace[0] as { residual: number }).residual)).toBeLessThan(1e-10)
})
