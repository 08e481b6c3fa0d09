import { formula, type About } from '../formula/formula.ts'
import { discRadius, ringOuterDiameter } from './quantities.ts'

/** Radius of a diameter, metres. */
export const about = {
  name: 'Radius of a diameter',
  in: { diameter: ringOuterDiameter },
  out: discRadius,
  equation: 'diameter / 2',
  source: ['definition', 'of a radius'],
} as const satisfies About

export const halfOf = formula<typeof about>('half-of', {}, ({ diameter }) => diameter / 2)
