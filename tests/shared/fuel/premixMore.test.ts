import fc from 'fast-check'
import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { premixShareAfter } from '@trochoid/compute/fuel/premixShareAfter.ts'
import premixCorrection from '@trochoid/compute/fuel/premixCorrection.calc.ts'
import premixMixture from '@trochoid/compute/fuel/premixMixture.calc.ts'
import premixTwoCans from '@trochoid/compute/fuel/premixTwoCans.calc.ts'

const of = (calc: AnyCalculation, change: Values = {}) => run(calc, { ...startValues(calc), ...change })
const share = fc.double({ min: 0.001, max: 0.05, noNaN: true })

test('twenty litres at 1 in 100 from cans at 1 in 50 and plain: ten of each', () => {
  const { outputs } = of(premixTwoCans, { wanted: 0.01, total: 0.02, first: 0.02, second: 0 })
  expect(outputs['fromFirst']).toBeCloseTo(0.01, 15)
  expect(outputs['fromSecond']).toBeCloseTo(0.01, 15)
})
test('both cans together hold the oil that was wanted', () => {
  fc.assert(fc.property(share, share, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (first, second, part) => {
    if (Math.abs(first - second) < 1e-5) return
    const wanted = second + part * (first - second)
    const { fromFirst, fromSecond } = of(premixTwoCans, { wanted, first, second, total: 0.03 }).outputs
    expect(fromFirst! * first + fromSecond! * second).toBeCloseTo(0.03 * wanted, 12)
    expect(fromFirst! + fromSecond!).toBeCloseTo(0.03, 12)
  }))
})
test('a share outside both cans cannot be mixed', () => {
  expect(() => of(premixTwoCans, { wanted: 0.03, first: 0.02, second: 0 })).toThrow(/outside those/)
  expect(() => of(premixTwoCans, { first: 0.01, second: 0.01 })).toThrow(/same share/)
})
test('what is told to add corrects the tank exactly, either way', () => {
  fc.assert(fc.property(share, fc.double({ min: 0, max: 1e-3, noNaN: true }), (wanted, poured) => {
    const present = 0.02
    const { oil, fuel, share: now } = of(premixCorrection, { wanted, poured, present }).outputs
    expect(Math.min(oil!, fuel!)).toBe(0)
    expect(premixShareAfter({ poured: oil!, added: fuel!, present, presentShare: now! })).toBeCloseTo(wanted, 12)
  }))
})
test('more fuel than there is room for is said so', () => expect(of(premixCorrection, { present: 0.05, poured: 0.002, wanted: 0.005, tank: 0.06 }).says).toContain('more than there is room for'))
test('no oil moves nothing; at 1 in 100 the shift is below what a sensor tells apart', () => {
  const none = of(premixMixture, { share: 0, density: 725, lambda: 0.8 }).outputs
  expect(none['shift']).toBeCloseTo(0, 12)
  expect(none['heatChange']).toBeCloseTo(0, 12)
  const some = of(premixMixture, { share: 0.01, density: 725, lambda: 0.8 })
  expect(Math.abs(some.outputs['shift']!)).toBeLessThan(0.005)
  expect(some.says).toContain('less than a sensor')
})
