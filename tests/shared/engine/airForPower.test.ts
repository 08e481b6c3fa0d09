import { expect, test } from 'vitest'
import { airForFuel } from '@trochoid/compute/engine/airForFuel.ts'
import { airMassFlow } from '@trochoid/compute/engine/airMassFlow.ts'
import { densityForAir } from '@trochoid/compute/engine/densityForAir.ts'
import { dryAirPressure } from '@trochoid/compute/engine/dryAirPressure.ts'
import { fillingLost } from '@trochoid/compute/engine/fillingLost.ts'
import { fuelFlowForAir } from '@trochoid/compute/engine/fuelFlowForAir.ts'
import { fuelForPower } from '@trochoid/compute/engine/fuelForPower.ts'
import { gasDensity } from '@trochoid/compute/engine/gasDensity.ts'
import { manifoldForDensity } from '@trochoid/compute/engine/manifoldForDensity.ts'
import { specificFuelConsumption } from '@trochoid/compute/engine/specificFuelConsumption.ts'
import { roomAbove } from '@trochoid/compute/engine/roomAbove.ts'
import { sensorStep } from '@trochoid/compute/engine/sensorStep.ts'
import { withOvershoot } from '@trochoid/compute/engine/withOvershoot.ts'
import airForPower from '@trochoid/compute/engine/airForPower.calc.ts'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'

test('each step turned round gives back where it came from', () => {
  const size = { volumetricEfficiency: 0.9, displacement: 654e-6, rotors: 2, speed: 800 }
  const density = densityForAir({ ...size, airFlow: 0.3 })
  expect(airMassFlow({ ...size, density })).toBeCloseTo(0.3, 12)
  const pressure = manifoldForDensity({ density, temperature: 320, share: 0.012 })
  expect(gasDensity({ pressure: dryAirPressure({ pressure, share: 0.012 }), temperature: 320 })).toBeCloseTo(density, 12)
  const mixture = { stoichiometricRatio: 14.5, lambda: 0.8 }
  expect(airForFuel({ ...mixture, fuelFlow: fuelFlowForAir({ ...mixture, airFlow: 0.3 }) })).toBeCloseTo(0.3, 12)
  const consumption = specificFuelConsumption({ fuelFlow: 0.026, power: 250e3 })
  expect(fuelForPower({ power: 250e3, consumption })).toBeCloseTo(0.026, 12)
})
test('the power and consumption of a solved point ask for the air, fuel, boost and ratio of that point', () => {
  for (const { values } of solveBuild(street, [500, 650, 800]).points) {
    const out = airForPower.answer({ ...valuesFor(airForPower, street, values), power: values['engine.power'], consumption: values['engine.specificFuelConsumption'] } as never)
    expect(out.air / values['engine.airFlow']!).toBeCloseTo(1, 6)
    expect(out.manifold / values['engine.manifoldPressure']!).toBeCloseTo(1, 6)
    expect(out.ratio / values['boost.pressureRatio']!).toBeCloseTo(1, 6)
    expect(out.corrected / values['boost.correctedFlow']!).toBeCloseTo(1, 6)
  }
})
test('what is lost and what is left make one', () => expect(fillingLost({ reference: 0.9, ve: 0.81 })).toBeCloseTo(0.1, 12))
test('a sensor reads more coarsely the wider it is; vacuum does not overshoot', () => {
  expect(sensorStep({ lowest: 20e3, highest: 420e3, counts: 1000 })).toBe(400)
  expect(withOvershoot({ manifold: 200e3, boost: 100e3, overshoot: 0.15 })).toBe(215e3)
  expect(withOvershoot({ manifold: 45e3, boost: -55e3, overshoot: 0.15 })).toBe(45e3)
  expect(roomAbove({ highest: 300e3, needed: 215e3 })).toBe(85e3)
})
