import { formula, type About } from '../formula/formula.ts'
import { standardGravity } from '../formula/constants.ts'
import { balancedMass, hangRadius, inertia, swingTime, wireLength } from './quantities.ts'

/**
 * Moment of inertia of a part hung level on equal upright wires spread evenly about its axis, from the time of its twisting swing.
 * `m g r² T² / (4 π² L)`, kg m².
 */
export const about = {
  name: 'Inertia from a twisting swing',
  in: { mass: balancedMass, radius: hangRadius, time: swingTime, length: wireLength },
  out: inertia,
  constants: { gravity: standardGravity },
  equation: 'mass * gravity * radius^2 * time^2 / (4 * pi^2 * length)',
  source: ['derived', 'small swings: the wires lift the part by r² φ² / 2 L, and that energy goes into turning'],
  notes: 'A few degrees either way, wires long against the radius they hang at, the axis through the centre of mass. No range is stated.',
} as const satisfies About

export const inertiaFromSwing = formula<typeof about>('inertia-from-swing', {}, ({ mass, radius, time, length }) =>
  (mass * standardGravity.value * radius ** 2 * time ** 2) / (4 * Math.PI ** 2 * length))
