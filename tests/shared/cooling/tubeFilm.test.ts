import { expect, test } from 'vitest'
import { tubeFilm } from '@trochoid/compute/cooling/tubeFilm.ts'

const water = { viscosity: 3.24e-4, specificHeat: 4208, conductivity: 0.675, diameter: 0.003 }
const nusselt = (reynolds: number, of = water): number => (tubeFilm({ ...of, reynolds }) * of.diameter) / of.conductivity
test('laminar between parallel plates, whatever the flow', () => { expect(nusselt(200)).toBeCloseTo(7.54, 10); expect(nusselt(2300)).toBeCloseTo(7.54, 10) })
test('turbulent lies within the quarter by which Dittus and Boelter may be out (Incropera, section 8.5)', () => {
  for (const re of [10e3, 20e3, 50e3]) {
    // An equation of Reynolds and Prandtl alone; its own book calls errors of 25 % possible.
    const dittus = 0.023 * re ** 0.8 * ((water.viscosity * water.specificHeat) / water.conductivity) ** 0.3
    expect(Math.abs(nusselt(re) / dittus - 1)).toBeLessThan(0.25)
  }
})
test('no step at either end of the straight line between', () => {
  for (const re of [2300, 3000]) expect(nusselt(re + 1e-6)).toBeCloseTo(nusselt(re - 1e-6), 5)
})
test('more flow is never less', () => { let last = 0; for (let re = 500; re < 40e3; re += 250) { const now = nusselt(re); expect(now).toBeGreaterThanOrEqual(last); last = now } })
