import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { annulusLeakage } from '@trochoid/compute/oil/annulusLeakage.ts'
import { compositeRoughness } from '@trochoid/compute/oil/compositeRoughness.ts'
import { filmSpeed } from '@trochoid/compute/oil/filmSpeed.ts'
import { flankAreaOf } from '@trochoid/compute/oil/flankAreaOf.ts'
import { gasLoad } from '@trochoid/compute/oil/gasLoad.ts'
import { grooveLeakage } from '@trochoid/compute/oil/grooveLeakage.ts'
import { holeLeakage } from '@trochoid/compute/oil/holeLeakage.ts'
import { mainShareOf } from '@trochoid/compute/oil/mainShareOf.ts'
import { opposedLoad } from '@trochoid/compute/oil/opposedLoad.ts'
import { petroffTorque } from '@trochoid/compute/oil/petroffTorque.ts'
import { rotorInertiaLoad } from '@trochoid/compute/oil/rotorInertiaLoad.ts'
import { rotorTurning } from '@trochoid/compute/oil/rotorTurning.ts'
import { shaftPressure } from '@trochoid/compute/oil/shaftPressure.ts'
import { slidingSpeed } from '@trochoid/compute/oil/slidingSpeed.ts'

const w = 700

describe('speeds of a rotor bearing', () => {
  const shell = rotorTurning({ speed: w })
  test('inertia turns with the shaft: two thirds of it make the film', () => expect(filmSpeed({ journal: w, shell, load: w })).toBeCloseTo((2 / 3) * w, 9))
  test('gas stands still: four thirds make the film', () => expect(filmSpeed({ journal: w, shell, load: 0 })).toBeCloseTo((4 / 3) * w, 9))
  test('either way two thirds slide', () => expect(slidingSpeed({ journal: w, shell })).toBeCloseTo((2 / 3) * w, 9))
  test('a load at half the sum of both leaves no film', () => expect(filmSpeed({ journal: w, shell, load: (2 / 3) * w })).toBeCloseTo(0, 9))
  test('seen from the shell nothing changes: only differences count', () => {
    fc.assert(fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (turn) => {
      expect(filmSpeed({ journal: w + turn, shell: shell + turn, load: w + turn })).toBeCloseTo(filmSpeed({ journal: w, shell, load: w }), 6)
      expect(slidingSpeed({ journal: w + turn, shell: shell + turn })).toBeCloseTo(slidingSpeed({ journal: w, shell }), 6)
    }))
  })
})

describe('loads', () => {
  test('twice the speed is four times the inertia', () => {
    expect(rotorInertiaLoad({ mass: 4, eccentricity: 0.015, speed: 800 }) / rotorInertiaLoad({ mass: 4, eccentricity: 0.015, speed: 400 })).toBeCloseTo(4, 12)
  })
  test('the flank is the side of the triangle of apexes', () => expect(flankAreaOf({ radius: 0.1, shift: 0, width: 0.08 })).toBeCloseTo(2 * 0.1 * Math.cos(Math.PI / 6) * 0.08, 12))
  test('equal pressures all round push nowhere', () => expect(gasLoad({ peak: 2e5, others: 2e5, area: 0.01 })).toBe(0))
  test('gas and inertia take from each other, whichever is larger', () => {
    expect(opposedLoad({ gas: 90e3, inertia: 30e3 })).toBe(60e3)
    expect(opposedLoad({ gas: 30e3, inertia: 90e3 })).toBe(60e3)
  })
  test('a rotor in the middle rests half on each bearing, one beside a bearing on that alone', () => {
    expect(mainShareOf({ offset: 0.2, spacing: 0.4 })).toBe(0.5)
    expect(mainShareOf({ offset: 0, spacing: 0.4 })).toBe(1)
  })
})

describe('gaps', () => {
  test('a spindle on one side leaks two and a half times as much', () => {
    const gap = { diameter: 0.02, clearance: 20e-6, length: 0.03 }
    expect(annulusLeakage({ ...gap, eccentricity: 1 }) / annulusLeakage({ ...gap, eccentricity: 0 })).toBeCloseTo(2.5, 12)
  })
  test('a groove in the middle feeds two gaps of half the length: four times the plain bush', () => {
    const bush = { diameter: 0.046, clearance: 25e-6, eccentricity: 0.3 }
    expect(grooveLeakage({ ...bush, land: 0.02 }) / annulusLeakage({ ...bush, length: 0.04 })).toBeCloseTo(4, 12)
  })
  test('leakage grows with the cube of the clearance, and a hole passes less than a groove', () => {
    expect(holeLeakage({ clearance: 60e-6, hole: 0.006, length: 0.06 }) / holeLeakage({ clearance: 30e-6, hole: 0.006, length: 0.06 })).toBeCloseTo(8, 9)
    expect(holeLeakage({ clearance: 30e-6, hole: 0.006, length: 0.06 })).toBeLessThan(grooveLeakage({ diameter: 0.072, clearance: 30e-6, land: 0.03, eccentricity: 0 }))
  })
})

test('roughness of both is more than either and less than their sum', () => {
  const both = compositeRoughness({ journal: 0.3e-6, shell: 0.4e-6 })
  expect(both).toBeCloseTo(0.5e-6, 12)
})
test('a centred journal’s friction follows speed and viscosity and the inverse of clearance', () => {
  const at = { viscosity: 0.01, diameter: 0.05, length: 0.025, clearance: 25e-6, speed: 600 }
  const one = petroffTorque(at)
  expect(petroffTorque({ ...at, speed: 1200 }) / one).toBeCloseTo(2, 12)
  expect(petroffTorque({ ...at, clearance: 50e-6 }) / one).toBeCloseTo(0.5, 12)
})
test('twice the speed asks four times the pressure into the shaft', () => {
  expect(shaftPressure({ density: 820, speed: 800, diameter: 0.046 }) / shaftPressure({ density: 820, speed: 400, diameter: 0.046 })).toBeCloseTo(4, 12)
})
