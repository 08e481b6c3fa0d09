import { formula, type About } from '../formula/formula.ts'
import { dischargeCoefficient, oilDensity, oilDrop, oilFlow, openArea } from './quantities.ts'

/** Oil through short holes. */
export const about = {
  name: 'Flow of jets and restrictors',
  in: { area: openArea, coefficient: dischargeCoefficient, drop: oilDrop, density: oilDensity },
  out: oilFlow,
  equation: 'coefficient * area * sqrt(2 * drop / density)',
  source: ['merritt-hydraulic', 'sharp-edged orifice, turbulent'],
  notes: 'For hot oil: cold oil passes less than this through a small hole.',
} as const satisfies About

export const jetFlow = formula<typeof about>('jet-flow', {}, ({ area, coefficient, drop, density }) => coefficient * area * Math.sqrt((2 * drop) / density))
