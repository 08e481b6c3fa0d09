import fc from 'fast-check'
import { expect, test } from 'vitest'
import { airMassFlow } from '@trochoid/compute/engine/airMassFlow.ts'
import { clearanceGasFactor } from '@trochoid/compute/engine/clearanceGasFactor.ts'
import { dryAirPressure } from '@trochoid/compute/engine/dryAirPressure.ts'
import { gasDensity } from '@trochoid/compute/engine/gasDensity.ts'

test('standard air has standard density', () => expect(gasDensity({ pressure: 101325, temperature: 288.15 })).toBeCloseTo(1.225, 4))
test('density rises with pressure and falls with temperature, in proportion', () => {
  const at = (pressure: number, temperature: number) => gasDensity({ pressure, temperature })
  expect(at(2e5, 300) / at(1e5, 300)).toBeCloseTo(2, 12)
  expect(at(1e5, 600) / at(1e5, 300)).toBeCloseTo(0.5, 12)
})
test('vapour and dry air share the pressure', () => {
  expect(dryAirPressure({ pressure: 1e5, share: 0 })).toBe(1e5)
  expect(dryAirPressure({ pressure: 1e5, share: 0.03 })).toBeCloseTo(97000, 9)
})
test('in one turn each rotor takes in one chamber', () => {
  expect(airMassFlow({ volumetricEfficiency: 1, density: 1, displacement: 0.001, rotors: 2, speed: 2 * Math.PI })).toBeCloseTo(0.002, 15)
})
test('twice of any of its inputs is twice the air', () => {
  const x = { volumetricEfficiency: 0.9, density: 1.2, displacement: 655e-6, rotors: 2, speed: 700 }
  for (const name of Object.keys(x) as (keyof typeof x)[]) expect(airMassFlow({ ...x, [name]: 2 * x[name] }) / airMassFlow(x)).toBeCloseTo(2, 12)
})
test('equal pressures leave filling as it is, and a longer compression softens the fall', () => {
  fc.assert(fc.property(fc.double({ min: 6, max: 14, noNaN: true }), (compressionRatio) => {
    expect(clearanceGasFactor({ backPressureRatio: 1, compressionRatio })).toBe(1)
    expect(clearanceGasFactor({ backPressureRatio: 2, compressionRatio: compressionRatio + 1 })).toBeGreaterThan(clearanceGasFactor({ backPressureRatio: 2, compressionRatio }))
  }))
})
