import { formula, type About } from '../formula/formula.ts'
import { fuelFlow, stoichiometricRatio } from '../fuel/quantities.ts'
import { airFlow, lambda } from './quantities.ts'

/** Dry air that a fuel flow burns in at a wanted lambda. */
export const about = {
  name: 'Air for a fuel flow',
  in: { fuelFlow, stoichiometricRatio, lambda },
  out: airFlow,
  equation: 'fuelFlow * stoichiometricRatio * lambda',
  source: ['definition', 'of lambda, turned round'],
} as const satisfies About

export const airForFuel = formula<typeof about>('air-for-fuel', {}, ({ fuelFlow: fuel, stoichiometricRatio, lambda: ratio }) => fuel * stoichiometricRatio * ratio)
