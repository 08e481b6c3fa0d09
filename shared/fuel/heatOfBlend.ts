import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelMassShare, heatingValue } from './quantities.ts'

/** Lower heating value of a blend of two fuels. */
export const about = {
  name: 'Heating value of a blend',
  in: { massShare: fuelMassShare, heat: role(heatingValue, 'H_1', 'Heating value of this part'), otherHeat: role(heatingValue, 'H_2', 'Heating value of the rest') },
  out: heatingValue,
  equation: 'massShare * heat + (1 - massShare) * otherHeat',
  source: ['derived', 'heat of the parts adds by mass; the small heat of mixing is left out'],
} as const satisfies About

export const heatOfBlend = formula<typeof about>('heat-of-blend', {}, ({ massShare, heat, otherHeat }) => massShare * heat + (1 - massShare) * otherHeat)
