import { expect, test } from 'vitest'
import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import airFlowAtSpeed from '@trochoid/compute/engine/airFlowAtSpeed.calc.ts'
import powerFromFuel from '@trochoid/compute/engine/powerFromFuel.calc.ts'

const sheet = builds.street
const points = solveBuild(sheet, [2500, 4500, 6500, 8000].map((n) => (n * Math.PI) / 30)).points.filter((p) => p.values['engine.power'] !== undefined)
const answers = (of: AnyCalculation, values: Readonly<Record<string, number>>) => of.answer(valuesFor(of, sheet, values))

test('the calculators say of a solved point what the solve says', () => {
  expect(points.length).toBeGreaterThan(2)
  for (const { values } of points) {
    expect(answers(airFlowAtSpeed, values)['air']! / values['engine.airFlow']!).toBeCloseTo(1, 6)
    const power = answers(powerFromFuel, values)
    expect(power['power']! / values['engine.power']!).toBeCloseTo(1, 6)
    expect(power['torque']! / values['engine.torque']!).toBeCloseTo(1, 6)
    expect(power['fuel']! / values['fuel.massFlow']!).toBeCloseTo(1, 6)
    expect(power['consumption']! / values['engine.specificFuelConsumption']!).toBeCloseTo(1, 6)
    expect(power['meanPressure']! / values['engine.meanEffectivePressure']!).toBeCloseTo(1, 6)
  }
})
test('at full load the start values burn 330 to 400 g/kWh', () => {
  const { values } = points[points.length - 1]!
  const grams = values['engine.specificFuelConsumption']! * 3.6e9
  expect(grams).toBeGreaterThan(330)
  expect(grams).toBeLessThan(400)
})
