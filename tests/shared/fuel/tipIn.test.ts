import { expect, test } from 'vitest'
import { run } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import tipIn from '@trochoid/compute/fuel/tipIn.calc.ts'

const late = (change: Readonly<Record<string, number>>) => run(tipIn, { ...startValues(tipIn), air: 0.3, manifold: 2e5, temperature: 320, speed: 600, ...change }).outputs

test('the duct holds as much air as passes while the fuel is on its way', () => {
  const { delay } = late({ distance: 0.4, area: 20e-4, rotors: 2 })
  const held = (2e5 / (287.05287 * 320)) * 0.4 * 20e-4
  expect(0.15 * delay!).toBeCloseTo(held, 12)
})
test('farther is later in proportion, more air is sooner', () => {
  expect(late({ distance: 0.4 })['delay']! / late({ distance: 0.2 })['delay']!).toBeCloseTo(2, 12)
  expect(late({ air: 0.4 })['delay']).toBeLessThan(late({})['delay']!)
})
test('it counts charges of one rotor, one in each turn', () => {
  const { delay, turns } = late({})
  expect(turns).toBeCloseTo(delay! / ((2 * Math.PI) / 600), 12)
})
