import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import reference from '../../reference/oil.json' with { type: 'json' }
import { conventionalViscosity } from '@trochoid/compute/oil/conventionalViscosity.ts'
import { d341Line } from '@trochoid/compute/oil/d341Line.ts'
import { d341Viscosity } from '@trochoid/compute/oil/d341Viscosity.ts'
import { dilutedViscosity } from '@trochoid/compute/oil/dilutedViscosity.ts'
import { fuelEnd100, fuelEnd40 } from '@trochoid/compute/oil/fuelEnd.ts'
import { gradeCranking } from '@trochoid/compute/oil/gradeCranking.ts'
import { gradeLimits } from '@trochoid/compute/oil/gradeLimits.ts'
import { highShearShareOf } from '@trochoid/compute/oil/highShearShareOf.ts'
import { oilDensityAt } from '@trochoid/compute/oil/oilDensityAt.ts'
import { oilSpecificHeatAt } from '@trochoid/compute/oil/oilSpecificHeatAt.ts'
import { refutasNumber } from '@trochoid/compute/oil/refutasNumber.ts'
import { refutasViscosity } from '@trochoid/compute/oil/refutasViscosity.ts'
import { waltherBlend } from '@trochoid/compute/oil/waltherBlend.ts'
import { waltherLine } from '@trochoid/compute/oil/waltherLine.ts'
import { waltherViscosity } from '@trochoid/compute/oil/waltherViscosity.ts'

const nu = fc.double({ min: 3e-6, max: 500e-6, noNaN: true })
const line = { viscosity1: 90e-6, temperature1: 313.15, viscosity2: 14e-6, temperature2: 373.15 }

describe('the viscosity line', () => {
  test('passes through both of its points', () => {
    fc.assert(fc.property(nu, fc.double({ min: 1.5, max: 10, noNaN: true }), (viscosity1, times) => {
      const found = waltherLine({ ...line, viscosity1, viscosity2: viscosity1 / times + 2e-6 })
      expect(waltherViscosity({ ...found, temperature: 313.15 }) / viscosity1).toBeCloseTo(1, 9)
      expect(waltherViscosity({ ...found, temperature: 373.15 }) / (viscosity1 / times + 2e-6)).toBeCloseTo(1, 9)
    }))
  })
  test('does not care which point comes first', () => {
    const other = waltherLine({ viscosity1: 14e-6, temperature1: 373.15, viscosity2: 90e-6, temperature2: 313.15 })
    expect(other.slope).toBeCloseTo(waltherLine(line).slope, 10)
    expect(other.intercept).toBeCloseTo(waltherLine(line).intercept, 9)
  })
  test('is the same with and without the term for thin liquids where oils are', () => {
    expect(d341Line(line).slope).toBeCloseTo(waltherLine(line).slope, 6)
    expect(d341Viscosity({ ...d341Line(line), temperature: 353.15 }) / waltherViscosity({ ...waltherLine(line), temperature: 353.15 })).toBeCloseTo(1, 5)
  })
  test('with the term, thin liquids come back within 1 %', () => {
    for (const thin of [0.4e-6, 0.7e-6, 1e-6, 1.6e-6]) {
      const found = d341Line({ ...line, viscosity1: 5e-6, viscosity2: thin })
      expect(Math.abs(d341Viscosity({ ...found, temperature: 373.15 }) / thin - 1)).toBeLessThan(0.01)
    }
  })
})

describe('blends', () => {
  test('all of one oil is that oil, equal oils stay, and the order does not matter', () => {
    fc.assert(fc.property(nu, nu, fc.double({ min: 0, max: 1, noNaN: true }), (viscosity1, viscosity2, share) => {
      expect(waltherBlend({ share: 1, viscosity1, viscosity2 }) / viscosity1).toBeCloseTo(1, 9)
      expect(waltherBlend({ share: 0, viscosity1, viscosity2 }) / viscosity2).toBeCloseTo(1, 9)
      expect(waltherBlend({ share, viscosity1, viscosity2: viscosity1 }) / viscosity1).toBeCloseTo(1, 9)
      expect(waltherBlend({ share, viscosity1, viscosity2 }) / waltherBlend({ share: 1 - share, viscosity1: viscosity2, viscosity2: viscosity1 })).toBeCloseTo(1, 9)
    }))
  })
  test('a blend lies between, below the mean of the two', () => {
    const blend = waltherBlend({ share: 0.5, viscosity1: 100e-6, viscosity2: 10e-6 })
    expect(blend).toBeGreaterThan(10e-6)
    expect(blend).toBeLessThan(55e-6)
  })
  test('two published rules agree within 2 % on engine oils', () => {
    const numbers = (refutasNumber({ viscosity: 14e-6 }) + refutasNumber({ viscosity: 18e-6 })) / 2
    expect(refutasViscosity({ number: numbers }) / waltherBlend({ share: 0.5, viscosity1: 14e-6, viscosity2: 18e-6 })).toBeCloseTo(1, 2)
  })
  test('the blending number turns round', () => {
    fc.assert(fc.property(nu, (viscosity) => { expect(refutasViscosity({ number: refutasNumber({ viscosity }) }) / viscosity).toBeCloseTo(1, 9) }))
  })
})

describe('fuel in the oil', () => {
  test('none changes nothing, more is thinner, hot and warm', () => {
    const none = dilutedViscosity({ share: 0, viscosity40: 90e-6, viscosity100: 14e-6 })
    expect(none.viscosity40 / 90e-6).toBeCloseTo(1, 9)
    expect(none.viscosity100 / 14e-6).toBeCloseTo(1, 9)
    let before = none
    for (const share of [0.02, 0.05, 0.1]) {
      const now = dilutedViscosity({ share, viscosity40: 90e-6, viscosity100: 14e-6 })
      expect(now.viscosity40).toBeLessThan(before.viscosity40)
      expect(now.viscosity100).toBeLessThan(before.viscosity100)
      before = now
    }
  })
  test('five per cent of fuel costs about a grade', () => {
    const { viscosity100 } = dilutedViscosity({ share: 0.05, viscosity40: 90e-6, viscosity100: 14e-6 })
    expect(viscosity100).toBeLessThan(12e-6)
    expect(viscosity100).toBeGreaterThan(9e-6)
  })
  test('what stays behind is as thin as n-decane in a reference library', () => {
    expect(fuelEnd40.value).toBeCloseTo(reference.decane[0]!.viscosity * 1e6, 3)
    expect(fuelEnd100.value).toBeCloseTo(reference.decane[1]!.viscosity * 1e6, 3)
  })
})

describe('grades', () => {
  test('hot grades follow each other without a gap from 20 up', () => {
    for (const [lower, upper] of [['20', '30'], ['30', '40'], ['40', '50'], ['50', '60']] as const) expect(gradeLimits({ grade: lower }).most).toBe(gradeLimits({ grade: upper }).least)
  })
  test('only light winter grades lower the high-shear limit of a 40', () => {
    expect(['0W-40', '5W-40', '10W-40'].map((grade) => gradeLimits({ grade }).highShear)).toEqual([3.5e-3, 3.5e-3, 3.5e-3])
    expect(['15W-40', '20W-40', '25W-40', '40'].map((grade) => gradeLimits({ grade }).highShear)).toEqual([3.7e-3, 3.7e-3, 3.7e-3, 3.7e-3])
    expect(gradeLimits({ grade: '10W-50' }).highShear).toBe(3.7e-3)
    expect(gradeLimits({ grade: '10W-30' }).highShear).toBe(2.9e-3)
  })
  test('a winter grade alone has a least viscosity and nothing else', () => {
    expect(gradeLimits({ grade: '15W' })).toEqual({ least: 5.6e-6, most: Number.NaN, highShear: Number.NaN })
    expect(gradeLimits({ grade: '' }).least).toBeNaN()
  })
  test('a hot grade alone promises nothing about cranking', () => expect(gradeCranking({ grade: '30' })).toEqual({ temperature: Number.NaN, most: Number.NaN }))
})

test('density falls as oil warms and is the known one at 15 °C', () => {
  expect(oilDensityAt({ density15: 865, temperature: 288.15 })).toBeCloseTo(865, 9)
  expect(oilDensityAt({ density15: 865, temperature: 373.15 })).toBeLessThan(815)
})
test('warm oil holds near 2.1 kJ/(kg K)', () => expect(oilSpecificHeatAt({ density15: 865, temperature: 363.15 })).toBeCloseTo(2140, -1.5))
test('an oil keeps no more than all of its viscosity', () => {
  expect(highShearShareOf({ highShear: 5e-3, lowShear: 4e-3 })).toBe(1)
  expect(highShearShareOf({ highShear: 3.5e-3, lowShear: 4e-3 })).toBe(0.875)
})
test('conventional grades keep their order when hot', () => {
  const hot = (['10', '20', '30', '40', '50', '60'] as const).map((oil) => conventionalViscosity({ oil, temperature: 373.15 }))
  for (let i = 1; i < hot.length; i++) expect(hot[i]!).toBeGreaterThan(hot[i - 1]!)
})
