import { formula, type About } from '../formula/formula.ts'
import { carMass, equivalentMass, massFactor } from './quantities.ts'

/** How many times its mass a car feels in a gear. `m_e / m`. */
export const about = {
  name: 'Mass factor in a gear',
  in: { equivalent: equivalentMass, mass: carMass },
  out: massFactor,
  equation: 'equivalent / mass',
  source: ['gillespie-dynamics', 'chapter 2, mass factor'],
} as const satisfies About

export const massFactorOf = formula<typeof about>('mass-factor-of', {}, ({ equivalent, mass }) => equivalent / mass)
