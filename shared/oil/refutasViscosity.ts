import { formula, type About } from '../formula/formula.ts'
import { blendingNumber, kinematicViscosity } from './quantities.ts'

/** Viscosity that has a given blending number. */
export const about = {
  name: 'Viscosity of a blending number',
  in: { number: blendingNumber },
  out: kinematicViscosity,
  equation: 'exp(exp((number - 10.975) / 14.534)) - 0.8',
  units: { out: 'mm²/s' },
  sample: { number: [10, 45] },
  source: ['maples-refinery', 'viscosity blending number, turned round'],
} as const satisfies About

export const refutasViscosity = formula<typeof about>('refutas-viscosity', {}, ({ number }) => (Math.exp(Math.exp((number - 10.975) / 14.534)) - 0.8) * 1e-6)
