import { formula, type About } from '../formula/formula.ts'
import { conventionalOil, dynamicViscosity, oilTemperature } from './quantities.ts'

/** Pa s and °F: the two constants of each curve. */
const fits: Readonly<Record<string, readonly [number, number]>> = {
  10: [0.0158, 1157.5], 20: [0.0136, 1271.6], 30: [0.0141, 1360.0], 40: [0.0121, 1474.4], 50: [0.017, 1509.6], 60: [0.0187, 1564.0],
}
const microreyn = 6.894757293168361e-3

/** Viscosity of the plain single grades that textbook bearing examples use. */
export const about = {
  name: 'Viscosity of a conventional single grade',
  in: { oil: conventionalOil, temperature: oilTemperature },
  out: dynamicViscosity,
  table: 'η = η_0 exp(b / (t + 95)) with t in °F and a pair of constants for each grade',
  nodes: [
    { in: { oil: '10', temperature: 1e12 }, out: 0.0158 * microreyn },
    { in: { oil: '30', temperature: 1e12 }, out: 0.0141 * microreyn },
    { in: { oil: '60', temperature: 1e12 }, out: 0.0187 * microreyn },
  ],
  source: ['seireg-dandage', 'fit to the viscosity charts, constants as printed in design textbooks'],
  notes: 'For textbook cases; a multigrade has a flatter curve.',
} as const satisfies About

export const conventionalViscosity = formula<typeof about>('conventional-viscosity', {}, ({ oil, temperature }) => {
  const [base, b] = fits[oil]!
  return base * microreyn * Math.exp(b / ((temperature - 273.15) * 1.8 + 32 + 95))
})
