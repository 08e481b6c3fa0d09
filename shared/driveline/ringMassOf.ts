import { formula, type About } from '../formula/formula.ts'
import { metalDensity, ringInnerDiameter, ringMass, ringOuterDiameter, ringThickness } from './quantities.ts'

/** Mass of a flat ring. `π/4 ρ s (D² − d²)`, kilograms. */
export const about = {
  name: 'Mass of a ring',
  in: { density: metalDensity, thickness: ringThickness, outer: ringOuterDiameter, inner: ringInnerDiameter },
  out: ringMass,
  equation: 'pi / 4 * density * thickness * (outer^2 - inner^2)',
  source: ['derived', 'volume of a ring times density'],
} as const satisfies About

export const ringMassOf = formula<typeof about>('ring-mass-of', {},
  ({ density, thickness, outer, inner }) => (Math.PI / 4) * density * thickness * (outer ** 2 - inner ** 2))
