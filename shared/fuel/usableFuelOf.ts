import { formula, type About } from '../formula/formula.ts'
import { tankVolume } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Fuel that reaches the pump before the pick-up draws air. */
export const about = {
  name: 'Usable fuel',
  in: { tank: role(tankVolume, 'V_t', 'Tank volume'), unusable: role(tankVolume, 'V_x', 'Fuel the pick-up cannot reach') },
  out: role(tankVolume, 'V_u', 'Usable fuel'),
  equation: 'tank - unusable',
  source: ['definition', 'what is left'],
} as const satisfies About

export const usableFuelOf = formula<typeof about>('usable-fuel-of', {}, ({ tank, unusable }) => tank - unusable)
