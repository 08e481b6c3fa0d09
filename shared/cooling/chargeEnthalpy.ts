import { formula, type About } from '../formula/formula.ts'
import { airSpecificHeat, type Constant } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { airFlow, chargeTemperature } from '../engine/quantities.ts'
import { enthalpyFlow } from '../media/quantities.ts'

const referenceTemperature: Constant = { name: 'reference temperature of enthalpies', symbol: 'T_ref', value: 298.15, unit: 'K', source: 'thermochemical convention, 25 °C' }

/** Heat that the charge brings in, above 25 °C: little, but the balance does not close without it. */
export const about = {
  name: 'Enthalpy flow of the charge',
  in: { flow: airFlow, temperature: chargeTemperature },
  out: role(enthalpyFlow, 'H_m', 'Enthalpy flow of the charge above 25 °C'),
  equation: 'flow * airSpecificHeat * (temperature - referenceTemperature)',
  constants: { airSpecificHeat, referenceTemperature },
  source: ['derived', 'sensible heat of the air above 298.15 K; the fuel’s own is left out'],
} as const satisfies About

export const chargeEnthalpy = formula<typeof about>('charge-enthalpy', {}, ({ flow, temperature }) => flow * airSpecificHeat.value * (temperature - referenceTemperature.value))
