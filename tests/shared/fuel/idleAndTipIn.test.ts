import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import handoverArrival from '@trochoid/compute/fuel/handoverArrival.calc.ts'
import idleQuality from '@trochoid/compute/fuel/idleQuality.calc.ts'
import matchedSet from '@trochoid/compute/fuel/matchedSet.calc.ts'
import wallFilm from '@trochoid/compute/fuel/wallFilm.calc.ts'

const of = (calc: AnyCalculation, change: Values = {}) => run(calc, { ...startValues(calc), ...change })
const idle = { density: 725, deadTime: 0.9e-3, smallest: 1.6e-3, secondaryDead: 1e-3, secondarySmallest: 1.8e-3 }

test('a single rail too large to idle is told so with the largest that would', () => {
  const { outputs, says } = of(idleQuality, idle)
  expect(outputs['oneReserve']).toBeLessThan(0)
  expect(says).toContain('it would not idle. The largest single rail that would is {largest}')
  // A set of that very size repeats, with nothing to spare.
  const fits = of(idleQuality, { ...idle, primaryFlow: outputs['largest']! / 2, secondaryFlow: outputs['largest']! / 2 }).outputs
  expect(fits['oneReserve']).toBeCloseTo(0, 9)
})
test('at the smallest pulse the spread is the stated one; twice the open time halves it', () => {
  const { outputs } = of(idleQuality, { ...idle, spread: 0.04 })
  const fuel = (startValues(idleQuality)['fuel'] as number) * ((1.6e-3 - 0.9e-3) / (outputs['pulse']! - 0.9e-3))
  expect(of(idleQuality, { ...idle, spread: 0.04, fuel }).outputs['shots']).toBeCloseTo(0.04, 9)
  expect(of(idleQuality, { ...idle, spread: 0.04, fuel: 2 * fuel }).outputs['shots']).toBeCloseTo(0.02, 9)
})
const tip = { fuel: 170e-6, full: 2e5, lambda: 0.79 }
test('dry walls want nothing; wetter and slower walls want more', () => {
  const dry = of(wallFilm, { ...tip, wall: 0 }).outputs
  expect([dry['extra'], dry['settled'], dry['lean']]).toEqual([0, 0, startValues(wallFilm)['wanted']])
  const { outputs } = of(wallFilm, tip)
  expect(outputs['farLean']).toBeGreaterThan(outputs['lean']!)
  expect(outputs['farExtra']).toBeGreaterThan(outputs['extra']!)
})
test('the film’s own balance: what goes missing over the whole tip-in is what the film takes up', () => {
  const { wall, settling, speed } = startValues(wallFilm) as Record<string, number>
  const { outputs } = of(wallFilm, tip)
  const before = 170e-6 * (45 / 200) * (0.79 / 0.9), after = 170e-6 * (85 / 200) * (0.79 / 0.9)
  const turn = (2 * Math.PI) / speed!
  let missing = 0
  for (let t = 0.5e-4; t < 10; t += 1e-4) missing += ((wall! * (after - before) * Math.exp(-t / settling!)) / turn) * 1e-4
  expect(outputs['extra']! / missing).toBeCloseTo(1, 3)
})
test('a set without spread leaves both rotors at what was meant; alike spreads are the spread at worst', () => {
  const none = of(matchedSet, { lambda: 0.8, primary: 0, secondary: 0 }).outputs
  expect([none['leanWorst'], none['richWorst'], none['leanUsual']]).toEqual([0.8, 0.8, 0.8])
  const three = of(matchedSet, { lambda: 0.8 }).outputs
  expect(three['worst']).toBeCloseTo(0.03, 12)
  expect(three['leanWorst']).toBeCloseTo(0.8 / 0.97, 12)
  expect(three['usual']).toBeLessThan(three['worst']!)
})
test('four like injectors to a rotor are usually half as far off as one', () => {
  const usual = (n: number): number => of(matchedSet, { lambda: 0.8, secondaries: 0, secondary: 0, primaries: n }).outputs['usual']!
  expect(usual(4)).toBeCloseTo(usual(1) / 2, 12)
})
test('a hand-over that is held on and fed arrives within half a per cent', () => {
  const { outputs, says } = of(handoverArrival)
  expect(outputs['plain']).toBeLessThan(-0.1)
  expect(outputs['fedToo']).toBeGreaterThan(-0.005)
  expect(says).toContain('within half a per cent')
})
