import { formula, type About } from '../formula/formula.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { inertia, turningEnergy } from './quantities.ts'

/** Energy stored in a turning part. `J ω² / 2`, joules: what a burst sets free. */
export const about = {
  name: 'Energy of a turning part',
  in: { inertia, speed: shaftSpeed },
  out: turningEnergy,
  equation: 'inertia * speed^2 / 2',
  source: ['definition', 'kinetic energy of rotation'],
} as const satisfies About

export const turningEnergyOf = formula<typeof about>('turning-energy-of', {}, ({ inertia, speed }) => (inertia * speed ** 2) / 2)
