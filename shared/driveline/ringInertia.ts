import { formula, type About } from '../formula/formula.ts'
import { inertia, metalDensity, ringInnerDiameter, ringOuterDiameter, ringThickness } from './quantities.ts'

/** Moment of inertia of a flat ring about its axis. `π/32 ρ s (D⁴ − d⁴)`, kg m². A flywheel is a few such rings, added. */
export const about = {
  name: 'Inertia of a ring',
  in: { density: metalDensity, thickness: ringThickness, outer: ringOuterDiameter, inner: ringInnerDiameter },
  out: inertia,
  equation: 'pi / 32 * density * thickness * (outer^4 - inner^4)',
  source: ['derived', 'integral of radius squared over the mass of the ring'],
  notes: 'Bolt holes and teeth left out.',
} as const satisfies About

export const ringInertia = formula<typeof about>('ring-inertia', {},
  ({ density, thickness, outer, inner }) => (Math.PI / 32) * density * thickness * (outer ** 4 - inner ** 4))
