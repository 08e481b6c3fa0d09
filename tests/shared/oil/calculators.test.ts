import { describe, expect, test } from 'vitest'
import { NoAnswer, run, type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { degC, rpm } from '@trochoid/compute/quantity/si.ts'
import bearingFilm from '@trochoid/compute/oil/bearingFilm.calc.ts'
import oilBlend from '@trochoid/compute/oil/oilBlend.calc.ts'
import oilLeakage from '@trochoid/compute/oil/oilLeakage.calc.ts'
import rotorBearingInertia from '@trochoid/compute/oil/rotorBearingInertia.calc.ts'
import shaftOilPressure from '@trochoid/compute/oil/shaftOilPressure.calc.ts'
import viscosityAtTemperature from '@trochoid/compute/oil/viscosityAtTemperature.calc.ts'
import viscosityIndex from '@trochoid/compute/oil/viscosityIndex.calc.ts'

const answer = (of: unknown, change: Record<string, unknown> = {}) => run(of as AnyCalculation, { ...startValues(of as AnyCalculation), ...change })

describe('viscosity', () => {
  test('at a known temperature it is the known one, and dynamic is kinematic times density', () => {
    const { outputs } = answer(viscosityAtTemperature, { temperature: degC(100) })
    expect(outputs['viscosity']! * 1e6).toBeCloseTo(14, 6)
    expect(outputs['dynamic']).toBeCloseTo(outputs['viscosity']! * outputs['density']!, 12)
  })
  test('the index says whether the oil is flat', () => {
    expect(answer(viscosityIndex, { viscosity40: 73.3e-6, viscosity100: 8.86e-6 }).says).toMatch(/plain mineral/)
    expect(answer(viscosityIndex, { viscosity40: 73.3e-6, viscosity100: 8.86e-6 }).outputs['low']! * 1e6).toBeCloseTo(119.94, 2)
    expect(answer(viscosityIndex).says).toMatch(/flat/)
  })
  test('a blend of one oil alone is that oil, and without fuel nothing is lost', () => {
    const { outputs } = answer(oilBlend, { share: 1, fuel: 0 })
    for (const name of ['viscosity100', 'other100', 'fuelled100']) expect(outputs[name]! * 1e6, name).toBeCloseTo(14, 6)
    for (const name of ['viscosity40', 'fuelled40']) expect(outputs[name]! * 1e6, name).toBeCloseTo(90, 5)
    expect(answer(oilBlend, { share: 0, fuel: 0 }).outputs['viscosity100']! * 1e6).toBeCloseTo(18, 6)
  })
  test('an oil thicker when hot is refused in a blend, whichever of the two it is', () => {
    expect(() => answer(oilBlend, { first40: 15e-6, first100: 16e-6 })).toThrow(NoAnswer)
    expect(() => answer(oilBlend, { second40: 15e-6, second100: 16e-6 })).toThrow(NoAnswer)
  })
})

describe('bearings', () => {
  const oil = { supply: degC(95), viscosity40: 80e-6, viscosity100: 12.5e-6, share: 0.88 }
  test('the general calculator finds the rotor bearing’s film when told its load and speeds', () => {
    const rotor = answer(rotorBearingInertia, { ...oil, speed: rpm(7500) }).outputs
    const same = answer(bearingFilm, { ...oil, load: rotor['load'], journal: rpm(7500), shell: rpm(2500), turning: rpm(7500) }).outputs
    expect(same['film']).toBeCloseTo(rotor['film']!, 12)
    expect(same['temperature']).toBeCloseTo(rotor['temperature']!, 9)
    expect(same['pressure']).toBeCloseTo(rotor['load']! / (0.072 * 0.06), 3)
  })
  test('power is about what a centred journal would lose, a little more', () => {
    const { outputs } = answer(bearingFilm, { ...oil, load: 20e3, journal: rpm(7000), shell: 0, turning: 0 })
    expect(outputs['power']!).toBeGreaterThan(500)
    expect(outputs['power']!).toBeLessThan(6000)
    expect(outputs['rise']! / 2 + degC(95)).toBeCloseTo(outputs['temperature']!, 1)
  })
  test('a load turning with half the journal has no film', () => {
    expect(() => answer(bearingFilm, { ...oil, journal: 600, shell: 0, turning: 300 })).toThrow(NoAnswer)
  })
  test('oil given the wrong way round has no answer', () => {
    expect(() => answer(bearingFilm, { ...oil, viscosity40: 20e-6, viscosity100: 20e-6 })).toThrow(/thicker at 100/)
  })
})

test('a groove in the middle passes four times what one end would', () => {
  const { outputs } = answer(oilLeakage, { pressure: 4e5, viscosity: 0.01 })
  expect(outputs['grooved']! / outputs['plain']!).toBeCloseTo(4, 9)
  expect(outputs['holed']!).toBeGreaterThan(0)
})
test('the shaft asks pressure by the oil’s density where it is hot', () => {
  const { outputs } = answer(shaftOilPressure, { speed: rpm(8000), temperature: degC(90) })
  expect(outputs['pressure']).toBeCloseTo((outputs['density']! * rpm(8000) ** 2 * 0.046 ** 2) / 8, 3)
  expect(outputs['density']!).toBeLessThan(830)
})
