import { expect, test } from 'vitest'
import { trueVapourPressure } from '@trochoid/compute/fuel/trueVapourPressure.ts'

const at = (kPa: number, celsius: number): number => trueVapourPressure({ reid: kPa * 1e3, temperature: celsius + 273.15 })

test('at 37.8 °C it is a little more than the figure of the test, which its own vapour space lowers', () => {
  for (const reid of [48, 60, 90]) {
    expect(at(reid, 37.8) / (reid * 1e3)).toBeGreaterThan(1)
    expect(at(reid, 37.8) / (reid * 1e3)).toBeLessThan(1.1)
  }
})
test('it rises with temperature and with volatility', () => {
  for (let t = 0; t < 90; t += 10) expect(at(60, t + 10)).toBeGreaterThan(at(60, t))
  for (let r = 30; r < 100; r += 10) expect(at(r + 10, 60)).toBeGreaterThan(at(r, 60))
})
test('its logarithm is a straight line over one over temperature', () => {
  // Rankine from a zero of 459.6 °F, as the source writes it.
  const inverse = (c: number): number => 1 / (c * 1.8 + 32 + 459.6)
  const slope = (a: number, b: number): number => Math.log(at(60, b) / at(60, a)) / (inverse(b) - inverse(a))
  expect(slope(10, 20) / slope(40, 60)).toBeCloseTo(1, 9)
})
