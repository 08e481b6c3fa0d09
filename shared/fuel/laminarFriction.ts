import { formula, type About } from '../formula/formula.ts'
import { frictionFactor, pipeReynolds } from './quantities.ts'

/** Darcy friction factor of laminar flow in a round line. */
export const about = {
  name: 'Friction of laminar flow',
  in: { reynolds: pipeReynolds },
  out: frictionFactor,
  equation: '64 / reynolds',
  source: ['white-fluid', 'section 6.4'],
  sample: { reynolds: [1, 2300] },
} as const satisfies About

export const laminarFriction = formula<typeof about>('laminar-friction', { reynolds: [0, 2300] }, ({ reynolds }) => 64 / reynolds)
