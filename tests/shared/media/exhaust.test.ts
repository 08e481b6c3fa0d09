import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exhaustEnthalpy } from '@trochoid/compute/media/exhaustEnthalpy.ts'
import { exhaustHeatRatio } from '@trochoid/compute/media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '@trochoid/compute/media/exhaustSpecificHeat.ts'
import { exhaustTemperature } from '@trochoid/compute/media/exhaustTemperature.ts'

const data = JSON.parse(readFileSync(new URL('../../reference/exhaustGas.json', import.meta.url), 'utf8')) as { 'enthalpy above 298.15 K, J/kg': Record<string, Record<string, number>>; 'specific heat, J/(kg K)': Record<string, number> }

test('the line stays within its stated 0.19 % of the polynomials at lambda 0.85', () => {
  for (const [T, h] of Object.entries(data['enthalpy above 298.15 K, J/kg']['0.85']!)) expect(Math.abs(exhaustEnthalpy({ temperature: Number(T) }) / h - 1), T).toBeLessThan(0.0019)
})
test('between lambda 0.75 and 1.00 it stays within 2.4 %', () => {
  for (const at of Object.values(data['enthalpy above 298.15 K, J/kg'])) for (const [T, h] of Object.entries(at)) expect(Math.abs(exhaustEnthalpy({ temperature: Number(T) }) / h - 1), T).toBeLessThan(0.024)
})
test('specific heat stays within 2 % of the polynomials', () => {
  for (const [T, cp] of Object.entries(data['specific heat, J/(kg K)'])) expect(Math.abs(exhaustSpecificHeat({ temperature: Number(T) }) / cp - 1), T).toBeLessThan(0.02)
})
test('enthalpy is nothing at 25 °C and its slope is the specific heat', () => {
  expect(exhaustEnthalpy({ temperature: 298.15 })).toBe(0)
  fc.assert(fc.property(fc.double({ min: 500, max: 1400, noNaN: true }), (temperature) => {
    const slope = (exhaustEnthalpy({ temperature: temperature + 0.5 }) - exhaustEnthalpy({ temperature: temperature - 0.5 })) / 1
    expect(slope).toBeCloseTo(exhaustSpecificHeat({ temperature }), 4)
  }))
})
test('temperature of its enthalpy is the temperature', () => {
  fc.assert(fc.property(fc.double({ min: 250, max: 2000, noNaN: true }), (temperature) => {
    expect(exhaustTemperature({ enthalpy: exhaustEnthalpy({ temperature }) })).toBeCloseTo(temperature, 8)
  }))
})
test('hot gas has a lower ratio of specific heats, near 1.30', () => {
  const at = (temperature: number) => exhaustHeatRatio({ specificHeat: exhaustSpecificHeat({ temperature }) })
  expect(at(1200)).toBeLessThan(at(800))
  expect(at(1100)).toBeGreaterThan(1.28)
  expect(at(1100)).toBeLessThan(1.31)
})
