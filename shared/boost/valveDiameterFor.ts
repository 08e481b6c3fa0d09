import { formula, type About } from '../formula/formula.ts'
import { flowArea, valveCount, valveDiameter } from './quantities.ts'

/** Seat bore of each of several equal wastegates that share a flow area. */
export const about = {
  name: 'Valve diameter for a flow area',
  in: { area: flowArea, number: valveCount },
  out: valveDiameter,
  equation: 'sqrt(4 * area / (pi * number))',
  source: ['definition', 'area of circles, turned round'],
} as const satisfies About

export const valveDiameterFor = formula<typeof about>('valve-diameter-for', {}, ({ area, number }) => Math.sqrt((4 * area) / (Math.PI * number)))
