import { expect, test } from 'vitest'
import { run, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import gradeAndClearance from '@trochoid/compute/oil/gradeAndClearance.calc.ts'
import oilForClearance from '@trochoid/compute/oil/oilForClearance.calc.ts'
import { gradeChart } from '@trochoid/compute/oil/gradeChart.ts'
import { viscosityForFilm } from '@trochoid/compute/oil/viscosityForFilm.ts'

const rpm = (x: number): number => (x * Math.PI) / 30
const oil = { viscosity40: 95e-6, viscosity100: 14.2e-6, share: 0.9 }
const point = { ...oil, supply: 373.15, speed: rpm(8000), manifold: 2e5, compression: 32e5 }
const asked = (change: Values = {}) => run(oilForClearance, { ...startValues(oilForClearance), ...point, ...change }).outputs

test('with the viscosity it asks the film is the wanted one in the case that asks more', () => {
  const first = asked()
  const times = first['asked']! / oil.viscosity100
  // The same oil line scaled at every temperature: what high shear leaves is scaled instead.
  const again = asked({ share: oil.share * times })
  expect(Math.min(again['inertia']!, again['gas']!) / first['wanted']!).toBeCloseTo(1, 3)
})
test('more clearance and warmer oil ask a thicker oil', () => {
  expect(asked({ diametral: 0.09e-3 })['asked']).toBeGreaterThan(asked()['asked']!)
  expect(asked({ supply: 393.15 })['asked']).toBeGreaterThan(asked()['asked']!)
})
test('the worst speed is not always the highest: gas weighs more where inertia relieves it less', () => {
  const gas = (speed: number): number => asked({ speed: rpm(speed) })['forGas']!
  expect(gas(3000)).toBeGreaterThan(gas(8000))
})
test('doubling the clearance with the film held asks what a hand calculation from the tables gives', () => {
  // Raimondi and Boyd, l/d = 1: S = 0.121 where h0/c is 0.4, S = 0.0446 where it is 0.2. Viscosity goes with S c²: 4 × 0.0446 / 0.121.
  const hand = (4 * 0.0446) / 0.121
  const bearing = { speed: rpm(6000), mass: 4.3, eccentricity: 0.015, diameter: 0.072, length: 0.072, density15: 865, supply: 373.15 }
  const diametral = 0.06e-3
  const film = bearing.speed * (2 / 3)
  const load = bearing.mass * bearing.eccentricity * bearing.speed ** 2
  const times = viscosityForFilm({
    wanted: 0.4 * (diametral / 2), pressure: load / (0.072 * 0.072), slenderness: 1, diameter: 0.072, clearance: diametral / 2, filmSpeed: film, slidingSpeed: film,
    supply: 373.15, density15: 865, ...oil,
  })
  const { now, needed } = run(gradeAndClearance, { ...startValues(gradeAndClearance), ...bearing, ...oil, share: oil.share * times, diametral, other: 2 * diametral }).outputs
  expect(needed! / now! / hand).toBeCloseTo(1, 2)
})
test('the chart holds a film for every grade, clearance and speed, thicker grades above thinner ones', () => {
  const chart = gradeChart({
    grades: ['30', '40', '50', '60'], clearances: [0.05e-3, 0.08e-3], speeds: [rpm(3000), rpm(8000)], supply: 373.15, index: 130, density15: 865,
    mass: 4.3, eccentricity: 0.015, diameter: 0.072, length: 0.06, gasLoad: 40e3,
  })
  expect(chart.length).toBe(4 * 2 * 2)
  for (const cell of chart) expect(cell.inertia! > 0 && cell.gas! > 0).toBe(true)
  const at = (grade: string) => chart.find((c) => c.grade === grade && c.clearance === 0.08e-3 && c.speed === rpm(8000))!.inertia!
  expect(at('60')).toBeGreaterThan(at('50'))
  expect(at('50')).toBeGreaterThan(at('30'))
})
