import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { discRadius, inertia, metalDensity, profileThickness } from './quantities.ts'

/** Inertia of a ring whose thickness changes in a straight line. `2π ρ ∫ t r³ dr`. */
export const about = {
  name: 'Inertia of a ring of changing thickness',
  in: { inner: role(discRadius, 'r_1', 'Inner radius'), outer: role(discRadius, 'r_2', 'Outer radius'), innerThickness: role(profileThickness, 't_1', 'Thickness at the inner radius'), outerThickness: role(profileThickness, 't_2', 'Thickness at the outer radius'), density: metalDensity },
  out: inertia,
  equation: '2 * pi * density * (outer - inner) * (innerThickness * (4 * inner^3 + 3 * inner^2 * outer + 2 * inner * outer^2 + outer^3) + outerThickness * (inner^3 + 2 * inner^2 * outer + 3 * inner * outer^2 + 4 * outer^3)) / 20',
  source: ['derived', 'integral of a straight thickness over the ring'],
} as const satisfies About

export const profileRingInertia = formula<typeof about>('profile-ring-inertia', {}, ({ inner: a, outer: b, innerThickness, outerThickness, density }) => (2 * Math.PI * density * (b - a) * (innerThickness * (4 * a ** 3 + 3 * a ** 2 * b + 2 * a * b ** 2 + b ** 3) + outerThickness * (a ** 3 + 2 * a ** 2 * b + 3 * a * b ** 2 + 4 * b ** 3))) / 20)
