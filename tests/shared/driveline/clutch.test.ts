import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { clampShareLeft } from '@trochoid/compute/driveline/clampShareLeft.ts'
import { clutchTorqueTwoSides } from '@trochoid/compute/driveline/clutchTorqueTwoSides.ts'
import { facingPressureUniformPressure } from '@trochoid/compute/driveline/facingPressureUniformPressure.ts'
import { facingPressureUniformWear } from '@trochoid/compute/driveline/facingPressureUniformWear.ts'
import { frictionRadiusUniformPressure } from '@trochoid/compute/driveline/frictionRadiusUniformPressure.ts'
import { frictionRadiusUniformWear } from '@trochoid/compute/driveline/frictionRadiusUniformWear.ts'
import { launchHeat } from '@trochoid/compute/driveline/launchHeat.ts'
import { launchSlipTime } from '@trochoid/compute/driveline/launchSlipTime.ts'
import { matchingHeat } from '@trochoid/compute/driveline/matchingHeat.ts'
import { reflectedCarInertia } from '@trochoid/compute/driveline/reflectedCarInertia.ts'
import capacity from '@trochoid/compute/driveline/clutchCapacity.calc.ts'
import takeUp from '@trochoid/compute/driveline/clutchTakeUp.calc.ts'
import { clutchTorqueForPull } from '@trochoid/compute/driveline/clutchTorqueForPull.ts'
import { pedalWindow } from '@trochoid/compute/driveline/pedalWindow.ts'
import torque from '@trochoid/compute/driveline/clutchTorque.calc.ts'
import launch from '@trochoid/compute/driveline/clutchEngagementHeat.calc.ts'

const facing = fc.record({ inner: fc.double({ min: 0.05, max: 0.2, noNaN: true }), width: fc.double({ min: 0.01, max: 0.2, noNaN: true }) }).map(({ inner, width }) => ({ inner, outer: inner + width }))

describe('friction radius', () => {
  test('uniform pressure acts farther out than uniform wear, both inside the facing', () => fc.assert(fc.property(facing, (f) => {
    const wear = frictionRadiusUniformWear(f), pressure = frictionRadiusUniformPressure(f)
    expect(pressure).toBeGreaterThan(wear)
    expect(wear).toBeGreaterThan(f.inner / 2)
    expect(pressure).toBeLessThan(f.outer / 2)
  })))
  test('both come to the mean radius of a narrow facing', () => {
    const narrow = { outer: 0.2002, inner: 0.2 }
    expect(frictionRadiusUniformPressure(narrow)).toBeCloseTo(0.10005, 6)
    expect(frictionRadiusUniformWear(narrow)).toBeCloseTo(0.10005, 10)
  })
  test('a facing down to the axis: half of the radius when bedded, two thirds when new', () => {
    expect(frictionRadiusUniformWear({ outer: 0.2, inner: 0 })).toBeCloseTo(0.05, 12)
    expect(frictionRadiusUniformPressure({ outer: 0.2, inner: 0 })).toBeCloseTo(0.2 / 3, 12)
  })
})

describe('pressure on the facing', () => {
  test('spread over the area, the pressure of a new facing gives the clamp load back', () => fc.assert(fc.property(facing, (f) => {
    expect(facingPressureUniformPressure({ clamp: 5000, ...f }) * Math.PI / 4 * (f.outer ** 2 - f.inner ** 2)).toBeCloseTo(5000, 6)
  })))
  test('a bedded facing is pressed hardest at its inner edge, harder than the mean', () => fc.assert(fc.property(facing, (f) => {
    expect(facingPressureUniformWear({ clamp: 5000, ...f })).toBeGreaterThan(facingPressureUniformPressure({ clamp: 5000, ...f }))
  })))
})

describe('clutch torque of two sides', () => {
  const one = { clamp: 8000, radius: 0.1, plates: 1, flywheelSide: 0.3, coverSide: 0.3 }
  test('does not mind which side has which friction', () => {
    expect(clutchTorqueTwoSides({ ...one, flywheelSide: 0.25, coverSide: 0.4 })).toBe(clutchTorqueTwoSides({ ...one, flywheelSide: 0.4, coverSide: 0.25 }))
  })
  test('equal sides make twice one side, and plates add', () => {
    expect(clutchTorqueTwoSides(one)).toBeCloseTo(480, 9)
    expect(clutchTorqueTwoSides({ ...one, coverSide: 0 })).toBeCloseTo(240, 9)
    expect(clutchTorqueTwoSides({ ...one, plates: 2 })).toBeCloseTo(960, 9)
  })
})

describe('clamp left', () => {
  const whole = { worn: 0, thrown: 0.1, speed: 400, lossSpeed: 800 }
  test('nothing is lost new and standing', () => expect(clampShareLeft({ ...whole, speed: 0 })).toBe(1))
  test('at the stated speed the stated loss, at half of it a quarter', () => {
    expect(clampShareLeft({ ...whole, speed: 800 })).toBeCloseTo(0.9, 12)
    expect(clampShareLeft(whole)).toBeCloseTo(0.975, 12)
  })
  test('wear multiplies, and it never goes below nothing', () => {
    expect(clampShareLeft({ ...whole, worn: 0.2, speed: 800 })).toBeCloseTo(0.72, 12)
    expect(clampShareLeft({ ...whole, thrown: 0.5, speed: 4000 })).toBe(0)
  })
})

describe('what the clutch holds, by the basis of its rating', () => {
  const start = { ...startValues(capacity), speed: 700, rating: 550, worn: 0.1, thrown: 0.1, lossSpeed: 700, clamp: 9000, outer: 0.24, inner: 0.16, plates: 1, flywheelSide: 0.3, coverSide: 0.2 }
  test('a measured slip torque stands as it is', () => {
    const { outputs, says } = run(capacity, { ...start, basis: 'measured' })
    expect(outputs['capacity']).toBe(550)
    expect(says).toContain('measured')
  })
  test('a maker’s static rating loses what wear and speed take', () => {
    const { outputs, says } = run(capacity, { ...start, basis: 'maker' })
    expect(outputs['capacity']).toBeCloseTo(550 * 0.81, 9)
    expect(says).toContain('maker')
  })
  test('an estimate comes from facing and clamp', () => {
    const { outputs, says } = run(capacity, { ...start, basis: 'facing' })
    expect(outputs['capacity']).toBeCloseTo(9000 * 0.81 * 0.1 * 0.5, 9)
    expect(says).toContain('estimate')
  })
})

test('a facing without width has no answer', () => {
  expect(() => torque.answer({ ...startValues(torque), outer: 0.2, inner: 0.2 })).toThrow(NoAnswer)
  expect(() => torque.answer({ ...startValues(torque), outer: 0.2001, inner: 0.2 })).not.toThrow()
})

describe('heat of engaging', () => {
  test('a launch makes as much heat as the car gains energy', () => fc.assert(fc.property(fc.double({ min: 100, max: 1000, noNaN: true }), fc.double({ min: 50, max: 900, noNaN: true }), (speed, torque) => {
    const inertia = reflectedCarInertia({ mass: 1300, radius: 0.3, ratio: 3, finalDrive: 4 })
    const time = launchSlipTime({ inertia, speed, torque })
    expect(launchHeat({ torque, speed, time })).toBeCloseTo(0.5 * 1300 * (speed * 0.3 / 12) ** 2, 6)
  })))
  test('matching two speeds loses no momentum: heat is the energy that is missing after', () => fc.assert(fc.property(
    fc.double({ min: 0.05, max: 5, noNaN: true }), fc.double({ min: 0.05, max: 50, noNaN: true }), fc.double({ min: 50, max: 900, noNaN: true }), fc.double({ min: 50, max: 900, noNaN: true }),
    (engine, car, before, after) => {
      const common = (engine * before + car * after) / (engine + car)
      const missing = 0.5 * engine * before ** 2 + 0.5 * car * after ** 2 - 0.5 * (engine + car) * common ** 2
      expect(matchingHeat({ engine, car, before, after })).toBeCloseTo(missing, 4)
    },
  )))
  test('a taller first gear makes a longer, hotter launch', () => {
    const start = startValues(launch)
    const short = launch.answer({ ...start, ratio: 3.6 }), tall = launch.answer({ ...start, ratio: 2.8 })
    expect(tall['rise']).toBeGreaterThan(short['rise']!)
    expect(tall['time']).toBeGreaterThan(short['time']!)
  })
})

describe('take-up', () => {
  const values = startValues(takeUp)
  const window = (over: object): number => takeUp.answer({ ...values, ...over } as never).window
  test('the pedal of the whole take-up is the pedal from nothing to what the clutch holds', () => {
    expect(pedalWindow({ travel: 0.02, capacity: 500, gentle: 0, brisk: 500 })).toBeCloseTo(0.02, 12)
  })
  test('a clutch that holds twice as much leaves half the pedal, twice the travel leaves twice', () => {
    expect(window({ capacity: 2 * (values['capacity'] as number) })).toBeCloseTo(window({}) / 2, 12)
    expect(window({ travel: 2 * (values['travel'] as number) })).toBeCloseTo(window({}) * 2, 12)
  })
  test('power through the gears closes: torque at the clutch times efficiency is the pull at the tyre', () => {
    const torque = clutchTorqueForPull({ mass: 1000, acceleration: 2, radius: 0.3, ratio: 3, finalDrive: 4, efficiency: 0.9 })
    expect((torque * 3 * 4 * 0.9) / 0.3).toBeCloseTo(2000, 9)
  })
  test('refuses a brisk start slower than the gentle one', () => {
    expect(() => window({ low: 2, high: 1 })).toThrow(NoAnswer)
  })
})
