import { formula, type About } from '../formula/formula.ts'
import { diametralClearance, radialClearance } from './quantities.ts'

/** Radial clearance from the diametral one that builders measure. */
export const about = {
  name: 'Radial clearance',
  in: { diametral: diametralClearance },
  out: radialClearance,
  equation: 'diametral / 2',
  source: ['definition', 'half of bore less journal'],
} as const satisfies About

export const radialFromDiametral = formula<typeof about>('radial-from-diametral', {}, ({ diametral }) => diametral / 2)
