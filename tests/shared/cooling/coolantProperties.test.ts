import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { conductivity, density, mixtures, shares, specificHeat, temperatures, viscosity } from '@trochoid/compute/data/ethyleneGlycol.ts'
import { coolantConductivity } from '@trochoid/compute/cooling/coolantConductivity.ts'
import { coolantDensity } from '@trochoid/compute/cooling/coolantDensity.ts'
import { coolantSpecificHeat } from '@trochoid/compute/cooling/coolantSpecificHeat.ts'
import { coolantViscosity } from '@trochoid/compute/cooling/coolantViscosity.ts'
import { freezingPoint } from '@trochoid/compute/cooling/freezingPoint.ts'
import { glycolMassShare } from '@trochoid/compute/cooling/glycolMassShare.ts'
import { waterMoleShare } from '@trochoid/compute/cooling/waterMoleShare.ts'

const properties = [
  ['density', density, coolantDensity, 1], ['specific heat', specificHeat, coolantSpecificHeat, 1],
  ['conductivity', conductivity, coolantConductivity, 1], ['viscosity', viscosity, coolantViscosity, 1e-3],
] as const

describe.each(properties)('%s', (_, table, f, unit) => {
  test('meets every entry of its table', () => {
    expect(table.length).toBe(temperatures.length)
    table.forEach((row, r) => row.forEach((value, c) => {
      if (value !== null) expect(f({ temperature: temperatures[r]!, glycol: shares[c]! }) / (value * unit)).toBeCloseTo(1, 11)
    }))
  })
  test('between entries it lies between them', () => {
    fc.assert(fc.property(fc.integer({ min: 8, max: 26 }), fc.integer({ min: 0, max: 5 }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (r, c, u, v) => {
      const corners = [table[r]![c]!, table[r]![c + 1]!, table[r + 1]![c]!, table[r + 1]![c + 1]!].map((x) => x * unit)
      const value = f({ temperature: temperatures[r]! + 5 * u, glycol: shares[c]! + 0.1 * v })
      expect(value).toBeGreaterThanOrEqual(Math.min(...corners))
      expect(value).toBeLessThanOrEqual(Math.max(...corners))
    }))
  })
  test('runs through its nodes without a jump, and straight on beyond both ends', () => {
    for (const at of [353.15, 373.15]) expect(f({ temperature: at - 1e-7, glycol: 0.5 }) / f({ temperature: at + 1e-7, glycol: 0.5 })).toBeCloseTo(1, 6)
    for (const glycol of [0.3, 0.6]) expect(f({ temperature: 350, glycol: glycol - 1e-9 }) / f({ temperature: 350, glycol: glycol + 1e-9 })).toBeCloseTo(1, 6)
    const line = unit === 1 ? (x: number) => x : Math.log
    const rise = (from: number) => line(f({ temperature: from + 2, glycol: 0.5 })) - line(f({ temperature: from, glycol: 0.5 }))
    expect(rise(380) / rise(370)).toBeCloseTo(1, 6)
    expect(rise(240) / rise(230)).toBeCloseTo(1, 6)
  })
})
test('a mixture between a frozen and a liquid column is read from both', () => {
  // At −25 °C the column of 40 % is frozen and continued straight: 50 % reads 1088.01, 40 % would read 1073.09.
  expect(coolantDensity({ temperature: 248.15, glycol: 0.45 })).toBeCloseTo((1088.01 + 2 * 1071.98 - 1070.87) / 2, 6)
  expect(coolantViscosity({ temperature: 248.15, glycol: 0.45 })).toBeCloseTo(1e-3 * Math.sqrt((30.5 * 15.75 ** 2) / 11.74), 9)
})
test('warmer coolant is lighter and thinner; more glycol is heavier, thicker, and carries less', () => {
  fc.assert(fc.property(fc.double({ min: 290, max: 370, noNaN: true }), fc.double({ min: 0, max: 0.5, noNaN: true }), (temperature, glycol) => {
    const warmer = { temperature: temperature + 6, glycol }, richer = { temperature, glycol: glycol + 0.1 }, here = { temperature, glycol }
    expect(coolantDensity(warmer)).toBeLessThan(coolantDensity(here))
    expect(coolantViscosity(warmer)).toBeLessThan(coolantViscosity(here))
    expect(coolantDensity(richer)).toBeGreaterThan(coolantDensity(here))
    expect(coolantViscosity(richer)).toBeGreaterThan(coolantViscosity(here))
    expect(coolantSpecificHeat(richer)).toBeLessThan(coolantSpecificHeat(here))
    expect(coolantConductivity(richer)).toBeLessThan(coolantConductivity(here))
  }))
})
test('freezing point and share by mass meet every row of the mixture table and run straight between and beyond', () => {
  for (const [volume, freezing, mass] of mixtures) {
    expect(freezingPoint({ glycol: volume / 100 })).toBeCloseTo(273.15 + freezing, 9)
    expect(glycolMassShare({ glycol: volume / 100 })).toBeCloseTo(mass / 100, 9)
  }
  expect(freezingPoint({ glycol: 0.022 })).toBeCloseTo(273.15 - 0.7, 9)
  expect(glycolMassShare({ glycol: 0.588 })).toBeCloseTo(0.61, 9)
})
test('share by mass follows from the densities of the two liquids to within a per cent', () => {
  // Glycol 1,113.5 kg/m³ and water 998.2 kg/m³ at 20 °C; their mixture shrinks a little, which the simple sum leaves out.
  for (const volume of [0.2, 0.4, 0.55]) expect(glycolMassShare({ glycol: volume })).toBeCloseTo((volume * 1113.5) / coolantDensity({ temperature: 293.15, glycol: volume }), 1)
})
test('mole share of water: all without glycol, half of each by mass is 77.5 %', () => {
  expect(waterMoleShare({ glycol: 0 })).toBe(1)
  expect(waterMoleShare({ glycol: 0.5 })).toBeCloseTo(62.0678 / (62.0678 + 18.01528), 12)
})
