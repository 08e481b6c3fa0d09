import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { inertiaFromSwing } from '@trochoid/compute/driveline/inertiaFromSwing.ts'
import { timeOfOneSwing } from '@trochoid/compute/driveline/timeOfOneSwing.ts'
import { boltHoleStress } from '@trochoid/compute/driveline/boltHoleStress.ts'
import { discHoopStress } from '@trochoid/compute/driveline/discHoopStress.ts'
import { discRadialStress } from '@trochoid/compute/driveline/discRadialStress.ts'
import { discStressAtHole } from '@trochoid/compute/driveline/discStressAtHole.ts'
import { equivalentMassIn } from '@trochoid/compute/driveline/equivalentMassIn.ts'
import { inertiaSum } from '@trochoid/compute/driveline/inertiaSum.ts'
import { revUpRate } from '@trochoid/compute/driveline/revUpRate.ts'
import { revUpTimeAt } from '@trochoid/compute/driveline/revUpTimeAt.ts'
import { rimSpeedOf } from '@trochoid/compute/driveline/rimSpeedOf.ts'
import { ringInertia } from '@trochoid/compute/driveline/ringInertia.ts'
import { ringMassOf } from '@trochoid/compute/driveline/ringMassOf.ts'
import { turningEnergyOf } from '@trochoid/compute/driveline/turningEnergyOf.ts'
import stress from '@trochoid/compute/driveline/discStress.calc.ts'
import flywheel from '@trochoid/compute/driveline/flywheelInertia.calc.ts'
import revUp from '@trochoid/compute/driveline/revUpTime.calc.ts'

describe('rings', () => {
  const steel = { density: 7850, thickness: 0.02 }
  test('two rings one inside the other are one wider ring', () => {
    const inside = { ...steel, outer: 0.2, inner: 0.1 }, outside = { ...steel, outer: 0.3, inner: 0.2 }, whole = { ...steel, outer: 0.3, inner: 0.1 }
    expect(ringInertia(inside) + ringInertia(outside)).toBeCloseTo(ringInertia(whole), 12)
    expect(ringMassOf(inside) + ringMassOf(outside)).toBeCloseTo(ringMassOf(whole), 12)
  })
  test('a thin ring has all its mass at its radius', () => {
    const thin = { ...steel, outer: 0.3001, inner: 0.3 }
    expect(ringInertia(thin) / ringMassOf(thin)).toBeCloseTo(0.15 ** 2, 4)
  })
  test('a solid disc has half its mass times radius squared', () => {
    const disc = { ...steel, outer: 0.3, inner: 0 }
    expect(ringInertia(disc)).toBeCloseTo(0.5 * ringMassOf(disc) * 0.15 ** 2, 12)
  })
  test('three rings of the calculation add to the flywheel', () => {
    const out = flywheel.answer({ ...startValues(flywheel), speed: 800, density: 7850, rimOuter: 0.3, rimInner: 0.2, rimThickness: 0.02, webOuter: 0.2, webInner: 0.1, webThickness: 0.02, hubOuter: 0.1, hubInner: 0, hubThickness: 0.02 })
    const disc = { ...steel, outer: 0.3, inner: 0 }
    expect(out['inertia']).toBeCloseTo(ringInertia(disc), 12)
    expect(out['mass']).toBeCloseTo(ringMassOf(disc), 12)
    expect(out['energy']).toBeCloseTo(turningEnergyOf({ inertia: ringInertia(disc), speed: 800 }), 6)
  })
})

describe('equivalent mass', () => {
  const car = { mass: 1300, wheels: 4, radius: 0.3, engine: 0.2, ratio: 2, finalDrive: 4 }
  test('is the mass whose energy equals that of all that moves', () => {
    const v = 20
    const energy = 0.5 * 1300 * v ** 2 + 0.5 * 4 * (v / 0.3) ** 2 + 0.5 * 0.2 * ((v / 0.3) * 8) ** 2
    expect(0.5 * equivalentMassIn(car) * v ** 2).toBeCloseTo(energy, 6)
  })
  test('a flywheel counts with the square of the gear', () => {
    const bare = equivalentMassIn({ ...car, engine: 0 })
    expect((equivalentMassIn({ ...car, ratio: 4 }) - bare) / (equivalentMassIn(car) - bare)).toBeCloseTo(4, 9)
  })
})

describe('revving up', () => {
  test('energy given equals energy stored', () => fc.assert(fc.property(fc.double({ min: 10, max: 500, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true }), (torque, inertia) => {
    const time = revUpTimeAt({ from: 0, to: 600, rate: revUpRate({ torque, inertia }) })
    // Torque times the angle turned, which is half the end speed times the time.
    expect(torque * 300 * time).toBeCloseTo(turningEnergyOf({ inertia, speed: 600 }), 4)
  })))
  test('counts all three inertias', () => expect(inertiaSum({ shaft: 1, flywheel: 20, clutch: 300 })).toBe(321))
  test('backwards has no answer', () => {
    const start = startValues(revUp)
    expect(() => revUp.answer({ ...start, from: 500, to: 500 })).toThrow(NoAnswer)
    expect(revUp.answer({ ...start, from: 500, to: 501 })['time']).toBeGreaterThan(0)
  })
})

describe('stress of a spinning disc', () => {
  const disc = { density: 7850, speed: 900, poisson: 0.3, outer: 0.15, hole: 0.03 }
  test('the general formula gives the one for the hole’s edge, and no radial stress at hole and rim', () => {
    expect(discHoopStress({ ...disc, radius: 0.03 })).toBeCloseTo(discStressAtHole(disc), 3)
    expect(discRadialStress({ ...disc, radius: 0.03 })).toBeCloseTo(0, 3)
    expect(discRadialStress({ ...disc, radius: 0.15 })).toBeCloseTo(0, 3)
  })
  test('forces on every element balance: d(r σ_r)/dr − σ_t + ρ ω² r² = 0', () => fc.assert(fc.property(fc.double({ min: 0.04, max: 0.14, noNaN: true }), (radius) => {
    const h = 1e-5
    const slope = ((radius + h) * discRadialStress({ ...disc, radius: radius + h }) - (radius - h) * discRadialStress({ ...disc, radius: radius - h })) / (2 * h)
    expect(slope - discHoopStress({ ...disc, radius }) + disc.density * disc.speed ** 2 * radius ** 2).toBeCloseTo(0, -1)
  })))
  test('grows with the square of speed', () => expect(discStressAtHole({ ...disc, speed: 1800 }) / discStressAtHole(disc)).toBeCloseTo(4, 9))
  test('never below density times rim speed squared times (3 + ν)/4', () => {
    const rim = rimSpeedOf({ diameter: 0.3, speed: 900 })
    expect(rim).toBeCloseTo(135, 9)
    expect(discStressAtHole(disc)).toBeGreaterThan(7850 * rim ** 2 * 3.3 / 4)
  })
  test('a small hole in a plate pulled one way sees three times the pull', () => expect(boltHoleStress({ hoop: 5, radial: 1 })).toBe(14))
  test('the calculation refuses circles out of order', () => {
    const start = { ...startValues(stress), diameter: 0.28, hole: 0.06, boltCircle: 0.09, speed: 800, density: 7850, poisson: 0.3 }
    expect(stress.answer(start)['atBolts']).toBeCloseTo(boltHoleStress({
      hoop: discHoopStress({ density: 7850, speed: 800, poisson: 0.3, outer: 0.14, hole: 0.03, radius: 0.045 }),
      radial: discRadialStress({ density: 7850, speed: 800, poisson: 0.3, outer: 0.14, hole: 0.03, radius: 0.045 }),
    }), 3)
    for (const wrong of [{ boltCircle: 0.28 }, { boltCircle: 0.06 }, { boltCircle: 0.3 }, { hole: 0.1 }]) expect(() => stress.answer({ ...start, ...wrong })).toThrow(NoAnswer)
  })
})

describe('inertia from a swing', () => {
  test('a thin hoop hung at its own radius swings like a pendulum as long as its wires', () => {
    const length = 1.2, radius = 0.15, mass = 3
    const pendulum = 2 * Math.PI * Math.sqrt(length / 9.80665)
    expect(inertiaFromSwing({ mass, radius, length, time: pendulum })).toBeCloseTo(mass * radius ** 2, 12)
  })
  test('half the time of a swing is a quarter of the inertia, and longer wires swing slower for the same part', () => {
    const one = { mass: 8, radius: 0.12, length: 1.5, time: 2 }
    expect(inertiaFromSwing({ ...one, time: 1 })).toBeCloseTo(inertiaFromSwing(one) / 4, 12)
    expect(inertiaFromSwing({ ...one, length: 3 })).toBeCloseTo(inertiaFromSwing(one) / 2, 12)
    expect(timeOfOneSwing({ whole: 40, swings: 20 })).toBe(2)
  })
})
