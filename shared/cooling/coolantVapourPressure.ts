import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { systemPressure, waterMole, waterPressure } from './quantities.ts'

/** Pressure at which a mixture boils at a temperature. */
export const about = {
  name: 'Pressure at which the coolant boils',
  in: { water: waterMole, saturation: role(waterPressure, 'p_w', 'Pure water boils at') },
  out: systemPressure,
  equation: 'saturation * water',
  source: ['raoult', 'ideal solution, glycol taken as giving no vapour'],
} as const satisfies About

export const coolantVapourPressure = formula<typeof about>('coolant-vapour-pressure', {}, ({ water, saturation }) => saturation * water)
