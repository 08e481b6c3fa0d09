import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { discRadius, metalDensity, profileThickness, ringMass } from './quantities.ts'

/** Mass of a ring whose thickness changes in a straight line from its inner to its outer radius. `2π ρ ∫ t r dr`. */
export const about = {
  name: 'Mass of a ring of changing thickness',
  in: { inner: role(discRadius, 'r_1', 'Inner radius'), outer: role(discRadius, 'r_2', 'Outer radius'), innerThickness: role(profileThickness, 't_1', 'Thickness at the inner radius'), outerThickness: role(profileThickness, 't_2', 'Thickness at the outer radius'), density: metalDensity },
  out: ringMass,
  equation: '2 * pi * density * (outer - inner) * (innerThickness * (2 * inner + outer) + outerThickness * (inner + 2 * outer)) / 6',
  source: ['derived', 'integral of a straight thickness over the ring'],
} as const satisfies About

export const profileRingMass = formula<typeof about>('profile-ring-mass', {}, ({ inner, outer, innerThickness, outerThickness, density }) => (2 * Math.PI * density * (outer - inner) * (innerThickness * (2 * inner + outer) + outerThickness * (inner + 2 * outer))) / 6)
