import fc from 'fast-check'
import { expect, test } from 'vitest'
import { brakePower } from '@trochoid/compute/engine/brakePower.ts'
import { coldAirEfficiency } from '@trochoid/compute/engine/coldAirEfficiency.ts'
import { frictionMeanPressure } from '@trochoid/compute/engine/frictionMeanPressure.ts'
import { fuelFlowForAir } from '@trochoid/compute/engine/fuelFlowForAir.ts'
import { fuelPerCharge } from '@trochoid/compute/engine/fuelPerCharge.ts'
import { fuelPower } from '@trochoid/compute/engine/fuelPower.ts'
import { indicatedPower } from '@trochoid/compute/engine/indicatedPower.ts'
import { meanEffectivePressure } from '@trochoid/compute/engine/meanEffectivePressure.ts'
import { meanPressurePower } from '@trochoid/compute/engine/meanPressurePower.ts'
import { ottoEfficiency } from '@trochoid/compute/engine/ottoEfficiency.ts'
import { pumpingMeanPressure } from '@trochoid/compute/engine/pumpingMeanPressure.ts'
import { releasedShare } from '@trochoid/compute/engine/releasedShare.ts'
import { shaftTorque } from '@trochoid/compute/engine/shaftTorque.ts'
import { specificFuelConsumption } from '@trochoid/compute/engine/specificFuelConsumption.ts'
import { rpm } from '@trochoid/compute/quantity/si.ts'

const engine = { displacement: 655e-6, rotors: 2, speed: rpm(6000) }

test('mean pressure and power are each other’s inverse', () => {
  fc.assert(fc.property(fc.double({ min: 1e3, max: 9e5, noNaN: true }), fc.double({ min: 60, max: 1100, noNaN: true }), (power, speed) => {
    const at = { ...engine, speed }
    expect(meanPressurePower({ ...at, meanPressure: meanEffectivePressure({ ...at, power }) }) / power).toBeCloseTo(1, 12)
  }))
})
test('ten bar on two chambers of half a litre at 6,000 rpm are 100 kW', () => {
  expect(meanPressurePower({ meanPressure: 1e6, displacement: 0.5e-3, rotors: 2, speed: rpm(6000) })).toBeCloseTo(100e3, 6)
})
test('power over speed is torque', () => expect(shaftTorque({ power: 1000, speed: 50 })).toBe(20))
test('no compression gives no work; more gives more, short of all', () => {
  expect(ottoEfficiency({ compressionRatio: 1, ratioOfSpecificHeats: 1.4 })).toBe(0)
  fc.assert(fc.property(fc.double({ min: 6, max: 14, noNaN: true }), (compressionRatio) => {
    const at = ottoEfficiency({ compressionRatio, ratioOfSpecificHeats: 1.4 })
    expect(at).toBeGreaterThan(ottoEfficiency({ compressionRatio, ratioOfSpecificHeats: 1.3 }))
    expect(at).toBeLessThan(ottoEfficiency({ compressionRatio: compressionRatio + 0.1, ratioOfSpecificHeats: 1.4 }))
    expect(at).toBeLessThan(1)
  }))
})
test('cold air is the case of 1.4', () => expect(coldAirEfficiency({ compressionRatio: 9 })).toBe(ottoEfficiency({ compressionRatio: 9, ratioOfSpecificHeats: 1.4 })))
test('rich of stoichiometric, heat for each mass of air stays as it is', () => {
  const heat = (lambda: number) => fuelPower({ fuelFlow: fuelFlowForAir({ airFlow: 0.2, stoichiometricRatio: 14.6, lambda }), heatingValue: 43e6 }) * releasedShare({ lambda })
  for (const lambda of [0.7, 0.8, 0.9, 0.999]) expect(heat(lambda) / heat(1)).toBeCloseTo(1, 12)
  expect(heat(1.25) / heat(1)).toBeCloseTo(0.8, 12)
})
test('lambda one burns air and fuel in the stated ratio', () => expect(fuelFlowForAir({ airFlow: 14.6, stoichiometricRatio: 14.6, lambda: 1 })).toBeCloseTo(1, 15))
test('friction is a line: its constant at standstill, its slope over a thousand turns', () => {
  expect(frictionMeanPressure({ speed: 0, constant: 60e3, slope: 12e3 })).toBe(60e3)
  expect(frictionMeanPressure({ speed: rpm(5000), constant: 60e3, slope: 12e3 })).toBeCloseTo(120e3, 9)
})
test('pumping is lost when exhaust stands above the manifold, gained when boost stands above exhaust', () => {
  expect(pumpingMeanPressure({ exhaustPressure: 250e3, manifoldPressure: 200e3 })).toBe(50e3)
  expect(pumpingMeanPressure({ exhaustPressure: 150e3, manifoldPressure: 200e3 })).toBe(-50e3)
})
test('what is lost comes off what the gas gives', () => expect(brakePower({ indicated: 100, friction: 15, pumping: -5 })).toBe(90))
test('indicated power is a share of the fuel’s', () => expect(indicatedPower({ fuelPower: 1000, releasedShare: 0.8, ottoEfficiency: 0.5, quality: 0.6 })).toBeCloseTo(240, 12))
test('the charges of all rotors over a second are the fuel of a second', () => {
  const fuelFlow = 0.012
  expect(fuelPerCharge({ fuelFlow, rotors: 2, speed: rpm(6000) }) * 2 * 100).toBeCloseTo(fuelFlow, 15)
})
test('specific consumption is fuel over work', () => expect(specificFuelConsumption({ fuelFlow: 0.02, power: 200e3 })).toBeCloseTo(1e-7, 18))
test('the start values land where boosted rotary engines do: 330 to 400 g/kWh at full load', () => {
  const fuel = fuelPower({ fuelFlow: 0.0215, heatingValue: 43e6 })
  const gas = indicatedPower({ fuelPower: fuel, releasedShare: 0.8, ottoEfficiency: ottoEfficiency({ compressionRatio: 9, ratioOfSpecificHeats: 1.4 }), quality: 0.57 })
  const lost = meanPressurePower({ ...engine, meanPressure: frictionMeanPressure({ speed: engine.speed, constant: 60e3, slope: 12e3 }) + 40e3 })
  const grams = specificFuelConsumption({ fuelFlow: 0.0215, power: brakePower({ indicated: gas, friction: lost, pumping: 0 }) }) * 3.6e9
  expect(grams).toBeGreaterThan(330)
  expect(grams).toBeLessThan(400)
})
