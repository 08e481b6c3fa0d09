import { expect, test } from 'vitest'
import { run, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import deadTimes from '@trochoid/compute/fuel/deadTimes.calc.ts'

const at = (voltage: number, change: Values = {}) => run(deadTimes, { ...startValues(deadTimes), voltage, ...change }).outputs

test('at the two stated voltages it gives the two stated dead times', () => {
  const start = startValues(deadTimes)
  expect(at(13.8)['primaryNow']).toBeCloseTo(start['primary'] as number, 12)
  expect(at(10)['primaryNow']).toBeCloseTo(start['primarySecond'] as number, 12)
})
test('a lower voltage lengthens dead time and smallest pulse by the same time', () => {
  const low = at(11), high = at(14.4)
  expect(low['primaryNow']).toBeGreaterThan(high['primaryNow']!)
  expect(low['primaryLeast']! - high['primaryLeast']!).toBeCloseTo(low['primaryNow']! - high['primaryNow']!, 12)
})
test('two figures at one voltage are refused', () => expect(() => at(12, { at: 12, secondAt: 12 })).toThrow(/same voltage/))
test('in the coupled build a weak alternator lengthens every pulse', () => {
  const pulse = (volts: number): number => solveBuild(setEntry(street, 'electric.voltage', { value: volts }), [600]).idle.values['fuel.primaryPulse']!
  expect(pulse(11.5) - pulse(13.8)).toBeGreaterThan(0.2e-3)
})
