import { expect, test } from 'vitest'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import coldStart from '@trochoid/compute/oil/coldStart.calc.ts'
import { dilutedViscosity } from '@trochoid/compute/oil/dilutedViscosity.ts'
import fuelDilution from '@trochoid/compute/oil/fuelDilution.calc.ts'
import { halfFullDrain } from '@trochoid/compute/oil/halfFullDrain.ts'
import highShear from '@trochoid/compute/oil/highShear.calc.ts'
import oilChange from '@trochoid/compute/oil/oilChange.calc.ts'
import oilDensity from '@trochoid/compute/oil/oilDensity.calc.ts'
import oilPumpPower from '@trochoid/compute/oil/oilPumpPower.calc.ts'
import oilSupply from '@trochoid/compute/oil/oilSupply.calc.ts'
import sealOilOverrun from '@trochoid/compute/oil/sealOilOverrun.calc.ts'
import sumpSlosh from '@trochoid/compute/oil/sumpSlosh.calc.ts'
import { turbulentDrain } from '@trochoid/compute/oil/turbulentDrain.ts'
import turboOil from '@trochoid/compute/oil/turboOil.calc.ts'

const of = (calc: AnyCalculation, change: Values = {}) => run(calc, { ...startValues(calc), ...change })
const oil = { viscosity40: 95e-6, viscosity100: 14.2e-6 }

test('at 15 °C the oil has its stated density and has not grown', () => {
  const { outputs } = of(oilDensity, { temperature: 288.15 })
  expect([outputs['density'], outputs['growth']]).toEqual([865, 0])
})
test('fuel that takes the oil to the edge of its grade leaves it exactly there', () => {
  const { outputs } = of(fuelDilution, { temperature: 363.15 })
  expect(dilutedViscosity({ share: outputs['leaves']!, viscosity40: 95e-6, viscosity100: 14.2e-6 }).viscosity100).toBeCloseTo(12.5e-6, 12)
  expect(of(fuelDilution, { temperature: 363.15, share: outputs['leaves']! * 1.01 }).outputs['grades']).toBe(30)
  expect(of(fuelDilution, { temperature: 363.15, share: outputs['leaves']! * 0.99 }).outputs['grades']).toBe(40)
})
test('with no fuel nothing is lost', () => expect(of(fuelDilution, { temperature: 363.15, share: 0 }).outputs['loss']).toBeCloseTo(0, 12))
test('an oil that keeps all of it in the fast test keeps all of it here', () => {
  const run1 = of(highShear, { ...oil, temperature: 373.15, highShear: 6.9e-3, speed: 800, film: 4e-6 })
  expect(run1.outputs['share']).toBe(1)
  const thin = of(highShear, { ...oil, temperature: 373.15, highShear: 3.5e-3, speed: 800, film: 4e-6 }).outputs
  expect(thin['share']).toBeCloseTo(3.5e-3 / thin['lowShear']!, 12)
  expect(thin['here']).toBeLessThan(run1.outputs['here']!)
})
test('a winter number promises pumping five kelvin below cranking, and a grade without one promises nothing', () => {
  const { outputs, says } = of(coldStart, { ...oil, grade: '10W-40', start: 253.15 })
  expect(outputs['cranks']! - outputs['pumps']!).toBeCloseTo(5, 9)
  expect(outputs['pumping']).toBeCloseTo(10, 9)
  expect(says).toContain('in hand')
  expect(() => of(coldStart, { ...oil, grade: '50' })).toThrow(/no winter number/)
  expect(of(coldStart, { ...oil, grade: '20W-50', start: 250 }).says).toContain('starve')
})
test('the cold gets thicker without end', () => {
  const eta = (start: number): number => of(coldStart, { ...oil, start }).outputs['viscosity']!
  expect(eta(250)).toBeGreaterThan(2 * eta(260))
})
test('pump power is pressure times what is pumped', () => {
  const { outputs } = of(oilPumpPower, { speed: 800, pressure: 5e5, taken: 5e-4, efficiency: 0.5 })
  expect(outputs['power']).toBeCloseTo((5e5 * outputs['given']!) / 0.5, 6)
  expect(outputs['returned']).toBeCloseTo(1 - 5e-4 / outputs['given']!, 12)
})
test('warmer oil is thinner, so the pressure falls at the same speed', () => {
  const pressure = (temperature: number): number => of(oilSupply, { ...oil, share: 0.9, speed: 200, temperature }).outputs['unrelieved']!
  expect(pressure(383.15)).toBeLessThan(pressure(343.15))
})
test('a reading is met again at its own speed and temperature, and never above the relief', () => {
  const x = { ...oil, share: 0.9, reading: 4e5, readingSpeed: 314, readingTemperature: 368.15 }
  expect(of(oilSupply, { ...x, speed: 314, temperature: 368.15 }).outputs['pressure']).toBeCloseTo(4e5, 3)
  for (const speed of [100, 400, 1000]) for (const temperature of [293.15, 373.15]) expect(of(oilSupply, { ...x, speed, temperature }).outputs['pressure']).toBeLessThanOrEqual(5.5e5)
})
test('a narrower drain carries the fourth power less while it is slow', () => {
  const drain = { length: 0.35, fall: 0.12, viscosity: 0.05, density: 820 }
  expect(halfFullDrain({ ...drain, bore: 0.016 }) / halfFullDrain({ ...drain, bore: 0.008 })).toBeCloseTo(16, 9)
  expect(turbulentDrain({ ...drain, bore: 0.016, viscosity: 0.004 })).toBeLessThan(halfFullDrain({ ...drain, bore: 0.016, viscosity: 0.004 }))
  const { outputs } = of(turboOil, { ...oil, pressure: 4e5, temperature: 373.15 })
  expect(of(turboOil, { ...oil, pressure: 4e5, temperature: 373.15, foam: 5 }).outputs['times']).toBeCloseTo(outputs['times']! / 2, 9)
  expect(of(turboOil, { ...oil, pressure: 4e5, temperature: 303.15, bore: 0.006 }).says).toContain('backs up')
})
test('a sump says whether it draws air, is short, or has some to spare', () => {
  expect(of(sumpSlosh, { acceleration: 20, volume: 0.0025 }).says).toContain('draws air')
  expect(of(sumpSlosh, { acceleration: 0 }).says).toContain('could be missing')
})
test('limits that are never met are said so; otherwise the sooner one holds', () => {
  expect(of(oilChange, { inflow: 1e-7, lost: 0.01 }).says).toContain('Neither limit')
  const { outputs } = of(oilChange)
  expect(outputs['interval']).toBe(Math.min(outputs['byFuel']!, outputs['byViscosity']!))
  expect(() => of(oilChange, { fresh: 12e-6 })).toThrow(/already at or below/)
})
test('in a fuel cut premix brings nothing and both bring what the pump alone does', () => {
  const { outputs } = of(sealOilOverrun, { speed: (6000 * Math.PI) / 30, time: 4 })
  expect(outputs['turns']).toBeCloseTo(400, 9)
  expect(outputs['premixed']).toBe(0)
  expect(outputs['both']).toBe(outputs['metered'])
  expect(outputs['metered']).toBeCloseTo(outputs['dose']! * 400, 15)
})
