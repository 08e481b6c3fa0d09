import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { traced } from '@trochoid/compute/formula/trace.ts'
import { heatOfRadiator } from '@trochoid/compute/cooling/heatOfRadiator.ts'
import { radiatorFlow } from '@trochoid/compute/cooling/radiatorFlow.ts'
import { steadyCoolantTemperature } from '@trochoid/compute/cooling/steadyCoolantTemperature.ts'
import { thermostatShare } from '@trochoid/compute/cooling/thermostatShare.ts'
import { sides } from './radiator.ts'

const here = { heat: 60e3, pump: 3e-3, glycol: 0.5, opens: 355.15, open: 368.15, conductance: 2600, air: 2, airTemperature: 308.15, ...sides }
test('at the answer the radiator casts off the heat put in, whatever the load', () => {
  fc.assert(fc.property(fc.double({ min: 100, max: 4e5, noNaN: true }), fc.double({ min: 3e-4, max: 6e-3, noNaN: true }), fc.double({ min: 0.2, max: 4, noNaN: true }), (heat, pump, air) => {
    const x = { ...here, heat, pump, air }
    let temperature: number
    try { temperature = steadyCoolantTemperature(x) } catch (error) { if (error instanceof NoAnswer) return; throw error }
    const coolant = radiatorFlow({ pump, opening: thermostatShare({ temperature, opens: here.opens, open: here.open }) })
    const { conductance, glycol, airTemperature } = here
    expect(Math.abs(heatOfRadiator({ temperature, coolant, glycol, air, airTemperature, conductance, ...sides }) - heat)).toBeLessThan(0.01)
    expect(temperature).toBeGreaterThan(here.opens)
  }))
})
test('little heat: the thermostat holds the engine between its two temperatures', () => {
  for (const heat of [1e3, 2e4, 4e4]) {
    const temperature = steadyCoolantTemperature({ ...here, heat })
    expect(temperature).toBeGreaterThan(here.opens)
    expect(temperature).toBeLessThan(here.open)
  }
  expect(steadyCoolantTemperature({ ...here, heat: 0 })).toBeCloseTo(here.opens, 6)
})
test('much heat: it rises in proportion above the air', () => {
  const above = (heat: number) => steadyCoolantTemperature({ ...here, heat }) - here.airTemperature
  expect(above(220e3) / above(200e3)).toBeCloseTo(1.1, 6)
})
test('warmer air, less air, less coolant flow, more glycol: hotter', () => {
  const x = { ...here, heat: 9e4 }
  const temperature = steadyCoolantTemperature(x)
  expect(steadyCoolantTemperature({ ...x, airTemperature: 318.15 })).toBeGreaterThan(temperature + 9)
  expect(steadyCoolantTemperature({ ...x, air: 1.5 })).toBeGreaterThan(temperature)
  expect(steadyCoolantTemperature({ ...x, pump: 1.5e-3 })).toBeGreaterThan(temperature)
  expect(steadyCoolantTemperature({ ...x, glycol: 0.6 })).toBeGreaterThan(temperature)
})
test('air warmer than the thermostat’s opening is no trouble', () => {
  const temperature = steadyCoolantTemperature({ ...here, heat: 5e3, airTemperature: 360 })
  expect(temperature).toBeGreaterThan(360)
  expect(temperature).toBeLessThan(here.open)
  expect(steadyCoolantTemperature({ ...here, heat: 5e3, airTemperature: 372 })).toBeGreaterThan(372)
})
test('says so where no temperature carries the heat away', () => {
  expect(() => steadyCoolantTemperature({ ...here, pump: 0 })).toThrow(NoAnswer)
  expect(() => steadyCoolantTemperature({ ...here, heat: 5e6 })).toThrow('at any temperature')
})
test('the trace shows the flow, the heat and the root once', () => {
  const { result, trace } = traced(() => steadyCoolantTemperature({ ...here, heat: 9e4 }))
  expect(trace.filter((e) => e.id === 'heat-of-radiator').length).toBe(1)
  expect(trace.filter((e) => e.id === 'root')).toEqual([expect.objectContaining({ value: result, name: 'coolant temperature' })])
})
