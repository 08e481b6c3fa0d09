import { formula, type About } from '../formula/formula.ts'
import { boltLength, elasticModulus, jointStiffness, stressArea } from './quantities.ts'

/** Pull that stretches a straight rod by a length. `E A / l`, N/m. */
export const about = {
  name: 'Stiffness of a bolt',
  in: { modulus: elasticModulus, area: stressArea, length: boltLength },
  out: jointStiffness,
  equation: 'modulus * area / length',
  source: ['shigley-machine-design', 'section 8-4, fastener stiffness'],
  notes: 'One area over the whole stretched length; a waisted bolt is softer.',
} as const satisfies About

export const rodStiffness = formula<typeof about>('rod-stiffness', {}, ({ modulus, area, length }) => (modulus * area) / length)
