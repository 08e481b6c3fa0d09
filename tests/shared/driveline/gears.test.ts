import { describe, expect, test } from 'vitest'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { speedAfterShift } from '@trochoid/compute/driveline/speedAfterShift.ts'
import { speedInGearAt } from '@trochoid/compute/driveline/speedInGearAt.ts'
import { tyreLimit } from '@trochoid/compute/driveline/tyreLimit.ts'
import equivalent from '@trochoid/compute/driveline/equivalentMass.calc.ts'
import torques from '@trochoid/compute/driveline/drivelineTorques.calc.ts'
import inGear from '@trochoid/compute/driveline/gearSpeed.calc.ts'
import shift from '@trochoid/compute/driveline/shiftHeat.calc.ts'

describe('gears and road speed', () => {
  test('a change of gear keeps the road speed', () => {
    const after = speedAfterShift({ speed: 700, from: 2.05, to: 1.4 })
    const road = { finalDrive: 4.1, radius: 0.31 }
    expect(speedInGearAt({ speed: after, ratio: 1.4, ...road })).toBeCloseTo(speedInGearAt({ speed: 700, ratio: 2.05, ...road }), 9)
    expect(after).toBeLessThan(700)
  })
  test('each gear is found by its name', () => {
    const start = { ...startValues(inGear), speed: 800, radius: 0.3, finalDrive: 4, first: 3, second: 2, third: 1.5, fourth: 1, fifth: 0.8, sixth: 0.6 }
    const road = (gear: string) => inGear.answer({ ...start, gear })['road']!
    expect([road('first'), road('second'), road('third'), road('fourth'), road('fifth'), road('sixth')].map((v) => v * 4 / 0.3 / 800)).toEqual([3, 2, 1.5, 1, 0.8, 0.6].map((i) => expect.closeTo(1 / i, 9)))
  })
  test('a gear that the gearbox lacks has no answer', () => {
    const start = startValues(equivalent)
    expect(start['sixth']).toBeNull()
    expect(() => equivalent.answer({ ...start, gear: 'sixth' })).toThrow(/sixth gear/)
    expect(equivalent.answer({ ...start, gear: 'fifth' })['factor']).toBeGreaterThan(1)
  })
  test('the mass factor falls from gear to gear', () => {
    const start = startValues(equivalent)
    const factors = ['first', 'second', 'third', 'fourth', 'fifth'].map((gear) => equivalent.answer({ ...start, gear })['factor']!)
    for (let i = 1; i < factors.length; i++) expect(factors[i]).toBeLessThan(factors[i - 1]!)
  })
  test('no change of gear makes no heat', () => {
    const start = { ...startValues(shift), speed: 700 }
    expect(shift.answer({ ...start, from: 'third', to: 'third' })['heat']).toBe(0)
    expect(shift.answer({ ...start, from: 'second', to: 'third' })['heat']).toBeGreaterThan(0)
  })
})

describe('tyre limit', () => {
  const car = { grip: 1, axleMass: 700, radius: 0.3, height: 0.5, wheelbase: 2.5 }
  test('weight that shifts back raises it', () => {
    expect(tyreLimit(car) / tyreLimit({ ...car, height: 0 })).toBeCloseTo(1 / 0.8, 9)
  })
  test('holds the balance of the car: pull times height over wheelbase is the load that shifts', () => {
    const pull = tyreLimit(car) / 0.3
    const load = 700 * 9.80665 + pull * 0.5 / 2.5
    expect(pull).toBeCloseTo(load * 1, 6)
  })
})

describe('torque along the driveline', () => {
  const start = { ...startValues(torques), torque: 400, clutch: 500, first: 3, finalDrive: 4, efficiency: 0.9, lock: 0.6, grip: 1, axleMass: 1000, radius: 0.5, height: 0, wheelbase: 2.5 }
  test('engine through the gears, while clutch and tyres hold', () => {
    const { outputs } = run(torques, start)
    expect(outputs['gearbox']).toBe(400)
    expect(outputs['differential']).toBeCloseTo(4320, 9)
    expect(outputs['halfShaft']).toBeCloseTo(2592, 9)
  })
  test('the clutch is a fuse', () => expect(torques.answer({ ...start, clutch: 300 })).toEqual({ gearbox: 300, differential: expect.closeTo(3240, 9), halfShaft: expect.closeTo(1944, 9) }))
  test('the tyres are a fuse', () => {
    const out = torques.answer({ ...start, grip: 0.5 })
    expect(out['gearbox']).toBe(400)
    expect(out['differential']).toBeCloseTo(0.5 * 1000 * 9.80665 * 0.5, 6)
  })
  test('a car that would tip over backwards has no answer, in either calculation', () => {
    for (const height of [2.5, 3]) {
      expect(() => torques.answer({ ...start, height })).toThrow(NoAnswer)
      expect(() => inGear.answer({ ...startValues(inGear), grip: 1, wheelbase: 2.5, height })).toThrow(NoAnswer)
    }
  })
})
