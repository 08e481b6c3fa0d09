import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelRise, fuelTemperature } from './quantities.ts'

/** Temperature of the fuel after it warmed. */
export const about = {
  name: 'Temperature of warmed fuel',
  in: { temperature: role(fuelTemperature, 'T_in', 'Fuel temperature before'), rise: fuelRise },
  out: role(fuelTemperature, 'T_out', 'Fuel temperature after'),
  equation: 'temperature + rise',
  source: ['definition', 'a temperature and a difference'],
} as const satisfies About

export const warmedFuel = formula<typeof about>('warmed-fuel', {}, ({ temperature, rise }) => temperature + rise)
