import { formula, type About } from '../formula/formula.ts'
import { exhaustHeatConstant, exhaustHeatSlope } from '../formula/constants.ts'
import { gasSpecificHeat } from '../boost/quantities.ts'
import { exhaustGasTemperature } from './quantities.ts'

/** Specific heat of rich exhaust gas at constant pressure: the slope of its enthalpy. */
export const about = {
  name: 'Specific heat of exhaust gas',
  in: { temperature: exhaustGasTemperature },
  out: gasSpecificHeat,
  equation: 'exhaustHeatConstant + exhaustHeatSlope * temperature',
  constants: { exhaustHeatConstant, exhaustHeatSlope },
  source: ['gri-mech-3', 'NASA polynomials of CO2, CO, H2O, H2, N2 and Ar; slope of the fitted enthalpy'],
  notes: 'Petrol burned at lambda 0.85. The straight line is within 2 % of the polynomials, closer where enthalpy is taken over a range.',
} as const satisfies About

export const exhaustSpecificHeat = formula<typeof about>('exhaust-specific-heat', { temperature: [500, 1400] }, ({ temperature }) => exhaustHeatConstant.value + exhaustHeatSlope.value * temperature)
