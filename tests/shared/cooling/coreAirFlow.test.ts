import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { traced } from '@trochoid/compute/formula/trace.ts'
import { coreAirFlow } from '@trochoid/compute/cooling/coreAirFlow.ts'
import { dropAtFlow } from '@trochoid/compute/cooling/dropAtFlow.ts'
import { fanPressure } from '@trochoid/compute/cooling/fanPressure.ts'
import { warmedAir } from '@trochoid/compute/cooling/warmedAir.ts'

const here = { ram: 250, shutOff: 180, freeFlow: 0.9, rated: 300, ratedAir: 2, exponent: 1.7, density: 1.16, ratedDensity: 1.146 }
test('what ram and fan bring is what the stack loses', () => {
  fc.assert(fc.property(fc.double({ min: 0, max: 3000, noNaN: true }), fc.double({ min: 1, max: 1000, noNaN: true }), fc.double({ min: 0.1, max: 3, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), (ram, shutOff, freeFlow, exponent) => {
    const air = coreAirFlow({ ...here, ram, shutOff, freeFlow, exponent })
    const brought = ram + fanPressure({ flow: air / here.density, shutOff, freeFlow })
    expect(Math.abs(dropAtFlow({ ...here, air, exponent }) / brought - 1)).toBeLessThan(1e-8)
  }))
})
test('the fan alone moves air at standstill, and hardly matters at speed', () => {
  expect(coreAirFlow({ ...here, ram: 0 })).toBeGreaterThan(0.5)
  expect(coreAirFlow({ ...here, ram: 0 })).toBeLessThan(here.freeFlow * here.density)
  expect(coreAirFlow({ ...here, ram: 2000 })).toBe(coreAirFlow({ ...here, ram: 2000, freeFlow: 0.5 }))
})
test('ram alone: at the rated loss and density it is the rated flow', () => {
  expect(coreAirFlow({ ...here, ram: 300, freeFlow: 0, density: here.ratedDensity })).toBeCloseTo(2, 10)
  expect(coreAirFlow({ ...here, ram: 300, shutOff: 0, density: here.ratedDensity })).toBeCloseTo(2, 10)
})
test('more ram, more air; more resistance, less', () => {
  const air = coreAirFlow(here)
  expect(coreAirFlow({ ...here, ram: 300 })).toBeGreaterThan(air)
  expect(coreAirFlow({ ...here, rated: 350 })).toBeLessThan(air)
})
test('nothing that moves air: says so', () => {
  expect(() => coreAirFlow({ ...here, ram: 0, freeFlow: 0 })).toThrow(NoAnswer)
  expect(() => coreAirFlow({ ...here, ram: 0, shutOff: 0 })).toThrow('Neither ram air nor a fan')
})
test('the trace shows both pressures at the answer and the root', () => {
  const { result, trace } = traced(() => coreAirFlow(here))
  expect(trace.map((e) => e.id)).toEqual(['fan-pressure', 'drop-at-flow', 'root', 'core-air-flow'])
  expect(trace[2]).toMatchObject({ name: 'air flow', value: result })
})
test('the pressures that the trace shows are those at the answer: they add to nothing', () => {
  const { result, trace } = traced(() => coreAirFlow(here))
  const [fan, drop] = trace as unknown as [{ in: { flow: number }; out: number }, { in: { air: number }; out: number }]
  expect(fan.in.flow).toBe(result / here.density)
  expect(drop.in.air).toBe(result)
  expect(here.ram + fan.out - drop.out).toBeCloseTo(0, 6)
})
test('a fan without free flow gives no pressure', () => {
  expect(fanPressure({ flow: 0, shutOff: 180, freeFlow: 0 })).toBe(0)
  expect(fanPressure({ flow: 0, shutOff: 180, freeFlow: 1 })).toBe(180)
  expect(fanPressure({ flow: 1.5, shutOff: 180, freeFlow: 1 })).toBe(0)
})
test('a charge cooler beside the radiator warms nothing; wholly in front it gives all', () => {
  expect(warmedAir({ outside: 300, heat: 2e4, coverage: 0, air: 2000 })).toBe(300)
  expect(warmedAir({ outside: 300, heat: 2e4, coverage: 1, air: 2000 })).toBe(310)
})
