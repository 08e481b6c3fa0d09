import { formula, type About } from '../formula/formula.ts'
import { enthalpyReference, exhaustHeatConstant, exhaustHeatSlope } from '../formula/constants.ts'
import { exhaustEnthalpyOf, exhaustGasTemperature } from './quantities.ts'

/** Heat in each kilogram of rich exhaust gas above 25 °C; what its unburned part could still release is not in it. */
export const about = {
  name: 'Enthalpy of exhaust gas',
  in: { temperature: exhaustGasTemperature },
  out: exhaustEnthalpyOf,
  equation: 'exhaustHeatConstant * (temperature - enthalpyReference) + exhaustHeatSlope / 2 * (temperature^2 - enthalpyReference^2)',
  constants: { exhaustHeatConstant, exhaustHeatSlope, enthalpyReference },
  source: ['gri-mech-3', 'NASA polynomials of CO2, CO, H2O, H2, N2 and Ar; fitted by tests/reference/exhaustGas.py'],
  notes: 'Petrol burned at lambda 0.85, composition frozen. The fit is within 0.19 % of the polynomials; at lambda 0.75 gas holds 1.5 % more, at 1.00 1.6 % less.',
} as const satisfies About

export const exhaustEnthalpy = formula<typeof about>('exhaust-enthalpy', { temperature: [500, 1400] }, ({ temperature }) =>
  exhaustHeatConstant.value * (temperature - enthalpyReference.value) + (exhaustHeatSlope.value / 2) * (temperature ** 2 - enthalpyReference.value ** 2))
