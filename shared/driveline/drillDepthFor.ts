import { formula, type About } from '../formula/formula.ts'
import { correctionMass, drillDepth, drillDiameter, metalDensity } from './quantities.ts'

/** Depth of a drilled hole that takes off a mass. `4 m / (π ρ d²)`, metres. */
export const about = {
  name: 'Depth of a correcting hole',
  in: { mass: correctionMass, diameter: drillDiameter, density: metalDensity },
  out: drillDepth,
  equation: '4 * mass / (pi * density * diameter^2)',
  source: ['derived', 'volume of a cylinder; the point of the drill is left out'],
} as const satisfies About

export const drillDepthFor = formula<typeof about>('drill-depth-for', {}, ({ mass, diameter, density }) => (4 * mass) / (Math.PI * density * diameter ** 2))
