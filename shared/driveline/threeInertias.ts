import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { inertia } from './quantities.ts'

/** Inertia of parts about one axis together. */
export const about = {
  name: 'Inertia of three rings',
  in: { first: role(inertia, 'J_1', 'Hub'), second: role(inertia, 'J_2', 'Web'), third: role(inertia, 'J_3', 'Rim') },
  out: inertia,
  equation: 'first + second + third',
  source: ['definition', 'moments of inertia about one axis add'],
} as const satisfies About

export const threeInertias = formula<typeof about>('three-inertias', {}, ({ first, second, third }) => first + second + third)
