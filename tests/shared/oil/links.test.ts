import { describe, expect, test } from 'vitest'
import { NoAnswer, type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { degC, rpm } from '@trochoid/compute/quantity/si.ts'
import gradeAndClearance from '@trochoid/compute/oil/gradeAndClearance.calc.ts'
import mainBearing from '@trochoid/compute/oil/mainBearing.calc.ts'
import oilFilmViscosity from '@trochoid/compute/oil/oilFilmViscosity.calc.ts'
import oilGrade from '@trochoid/compute/oil/oilGrade.calc.ts'
import oilSupply from '@trochoid/compute/oil/oilSupply.calc.ts'
import oilTemperature from '@trochoid/compute/oil/oilTemperature.calc.ts'
import rotorBearingGas from '@trochoid/compute/oil/rotorBearingGas.calc.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import sealOil from '@trochoid/compute/oil/sealOil.calc.ts'
import viscosityAtTemperature from '@trochoid/compute/oil/viscosityAtTemperature.calc.ts'

const answer = (of: unknown, change: Record<string, unknown> = {}) => (of as AnyCalculation).answer({ ...startValues(of as AnyCalculation), ...change }) as Record<string, number>
const hot = { supply: degC(95), viscosity40: 80e-6, viscosity100: 12.5e-6, share: 0.88, speed: rpm(7500) }
const run = { ...hot, manifold: 190e3, compression: 34e5 }

describe('oil in the sump', () => {
  const at = (change: Record<string, unknown> = {}) => answer(oilFilmViscosity, { temperature: degC(100), dilution: 0, ...change })
  test('known by its grade alone it is the thinnest of that grade', () => expect(at().viscosity100).toBeCloseTo(12.5e-6, 12))
  test('own figures replace the grade’s', () => {
    const own = at({ own40: 98e-6, own100: 14.5e-6, ownHighShear: 4e-3 })
    expect(own.viscosity100).toBeCloseTo(14.5e-6, 12)
    expect(own.viscosity40).toBeCloseTo(98e-6, 12)
    expect(own.share).toBeLessThan(1)
    expect(own.viscosity!).toBeGreaterThan(at().viscosity!)
  })
  test('a winter grade alone loses nothing to shear', () => expect(at({ grade: '25W' }).share).toBe(1))
  test('fuel thins it', () => expect(at({ dilution: 0.05 }).viscosity!).toBeLessThan(0.9 * at().viscosity!))
  test('viscosities the wrong way round have no answer', () => expect(() => at({ own40: 15e-6, own100: 20e-6 })).toThrow(NoAnswer))
})

describe('bearings', () => {
  test('inertia thins the film with speed', () => expect(answer(rotorBearingInertia, { ...hot, speed: rpm(8500) }).film!).toBeLessThan(answer(rotorBearingInertia, hot).film!))
  test('gas is worst where boost is full and speed low', () => expect(answer(rotorBearingGas, { ...run, speed: rpm(3000) }).film!).toBeLessThan(answer(rotorBearingGas, run).film!))
  test('a measured peak replaces the estimate', () => {
    expect(answer(rotorBearingGas, { ...run, measured: 60e5 }).peak).toBe(60e5)
    expect(answer(rotorBearingGas, run).peak).toBe(68e5)
    expect(answer(mainBearing, { ...run, spacing: 0.35, offset: 0.09, measured: 40e5 }).film!).toBeGreaterThan(answer(mainBearing, { ...run, spacing: 0.35, offset: 0.09 }).film!)
  })
  test('a rotor nearer the bearing loads it more', () => {
    expect(answer(mainBearing, { ...run, spacing: 0.35, offset: 0.07 }).load!).toBeGreaterThan(answer(mainBearing, { ...run, spacing: 0.35, offset: 0.09 }).load!)
  })
  test('more clearance wants a thicker oil', () => {
    const wider = answer(gradeAndClearance, { ...hot, other: 90e-6 })
    expect(wider.times!).toBeGreaterThan(1.08)
    expect(wider.unchanged!).toBeLessThan(wider.film!)
    expect(answer(gradeAndClearance, { ...hot, other: 60e-6 }).times).toBeCloseTo(1, 2)
  })
})

describe('supply', () => {
  const at = (change: Record<string, unknown>) => answer(oilSupply, { temperature: degC(95), viscosity: 0.01, ...change })
  test('pressure rises with speed up to the relief setting', () => {
    expect(at({ speed: rpm(900) }).pressure!).toBeLessThan(at({ speed: rpm(1500) }).pressure!)
    expect(at({ speed: rpm(7000) }).pressure).toBe(5.5e5)
  })
  const read = (n: number, reading: number) => at({ speed: rpm(n), reading, readingSpeed: rpm(3000) }).pressure!
  test('a hot reading below the relief setting is the pressure at its speed and tells the leakage of all others', () => {
    expect(read(3000, 4e5)).toBeCloseTo(4e5, 3)
    expect(read(900, 4e5)).toBeLessThan(at({ speed: rpm(900) }).pressure!)
    expect(read(2000, 4e5)).toBeLessThan(4e5)
    expect(read(7000, 4e5)).toBe(5.5e5)
    expect(read(2000, 3e5)).toBeLessThan(read(2000, 4e5))
  })
  test('a hot reading above the relief setting tells where the valve opens', () => {
    expect(read(7000, 6e5)).toBe(6e5)
    expect(read(900, 6e5)).toBe(at({ speed: rpm(900) }).pressure)
  })
  test('below the relief setting the engine takes what the pump gives less its slip', () => {
    const low = at({ speed: rpm(1000) })
    expect(low.taken!).toBeLessThan(low.given!)
    expect(low.taken!).toBeGreaterThan(0.75 * low.given!)
  })
})

describe('oil temperature', () => {
  const at = (change: Record<string, unknown> = {}) => answer(oilTemperature, { speed: rpm(7000), fullHeat: 60e3, ...change })
  test('a cooler at its rated point does its rated heat', () => {
    const speed = ((1e-3 / (11e-6 * 0.88)) * 2 * Math.PI)
    const { temperature, conductance } = at({ speed, fullHeat: 28e3, share: 1, opens: degC(-20), air: 300 })
    const oilRate = 1e-3 * 2230 * 806
    expect(temperature!).toBeGreaterThan(300 + 80 - (28e3 / oilRate) * 1.02)
    expect(temperature!).toBeLessThan(300 + 80 - (28e3 / oilRate) * 0.98)
    expect(conductance!).toBeGreaterThan(100)
  })
  test('the thermostat holds it when there is little heat', () => expect(at({ fullHeat: 1e3 }).temperature).toBe(degC(80)))
  test('more air, less heat or a cooler day cools it', () => {
    const now = at({ share: 0.8 }).temperature!
    expect(at({ share: 0.8, airFlow: 1.2 }).temperature!).toBeLessThan(now)
    expect(at({ share: 0.7 }).temperature!).toBeLessThan(now)
    expect(at({ share: 0.8, air: 285 }).temperature!).toBeLessThan(now)
  })
})

test('seals get what the chosen way brings, as a multiple of the reference', () => {
  const at = (change: Record<string, unknown>) => answer(sealOil, { speed: 2 * Math.PI * 100, manifold: 150e3, premixOil: 1e-4, ...change })
  expect(at({ by: 'premixed' }).times).toBeCloseTo(1, 9)
  expect(at({ by: 'metered' }).dose).toBeCloseTo(1.4e-9 * 865, 15)
  expect(at({ by: 'both' }).dose).toBeCloseTo(1e-6 + 1.4e-9 * 865, 15)
})
test('a grade is a band: thick and thin end stand apart', () => {
  const { thin, thick } = answer(oilGrade, { temperature: degC(110) })
  expect(thick! / thin!).toBeGreaterThan(1.2)
  expect(() => answer(oilGrade, { grade: '10W' })).toThrow(NoAnswer)
})
test('two points that are no oil have no answer', () => {
  expect(() => answer(viscosityAtTemperature, { temperature2: degC(40) })).toThrow(/same temperature/)
  expect(() => answer(viscosityAtTemperature, { viscosity2: 95e-6 })).toThrow(/thinner/)
})
