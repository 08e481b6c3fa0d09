import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelChange, heatingValue } from './quantities.ts'

/** How far a value moved from another, as a share. */
export const about = {
  name: 'Relative change of the heating value',
  in: { now: role(heatingValue, 'H_2', 'Heating value with oil'), before: role(heatingValue, 'H_1', 'Heating value without') },
  out: fuelChange,
  equation: 'now / before - 1',
  source: ['definition', 'a relative difference'],
} as const satisfies About

export const changeOf = formula<typeof about>('change-of', {}, ({ now, before }) => now / before - 1)
