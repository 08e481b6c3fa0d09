import { formula, type About } from '../formula/formula.ts'
import { enthalpyReference, exhaustHeatConstant, exhaustHeatSlope } from '../formula/constants.ts'
import { exhaustEnthalpyOf, exhaustGasTemperature } from './quantities.ts'

/** Temperature at which rich exhaust gas holds a given enthalpy: the inverse of the enthalpy. */
export const about = {
  name: 'Temperature of exhaust gas from its enthalpy',
  in: { enthalpy: exhaustEnthalpyOf },
  out: exhaustGasTemperature,
  equation: '(sqrt((exhaustHeatConstant + exhaustHeatSlope * enthalpyReference)^2 + 2 * exhaustHeatSlope * enthalpy) - exhaustHeatConstant) / exhaustHeatSlope',
  constants: { exhaustHeatConstant, exhaustHeatSlope, enthalpyReference },
  source: ['derived', 'positive root of the enthalpy, a quadratic in temperature'],
  notes: 'The range is that of the enthalpy’s fit, 500 to 1400 K.',
} as const satisfies About

const atReference = exhaustHeatConstant.value + exhaustHeatSlope.value * enthalpyReference.value

export const exhaustTemperature = formula<typeof about>('exhaust-temperature', { enthalpy: [223000, 1356000] }, ({ enthalpy }) =>
  (Math.sqrt(atReference ** 2 + 2 * exhaustHeatSlope.value * enthalpy) - exhaustHeatConstant.value) / exhaustHeatSlope.value)
