import { type Constant } from '../formula/constants.ts'

/** The part of petrol that stays in hot oil, stood for by n-decane. Numbers in mm²/s, as the blending equation takes them. */
export const fuelEnd40: Constant = { value: 0.966, unit: '1', symbol: 'ν_f40', name: 'viscosity of n-decane at 40 °C, mm²/s', source: 'CoolProp 8.0.0 at one atmosphere' }
export const fuelEnd100: Constant = { value: 0.545, unit: '1', symbol: 'ν_f100', name: 'viscosity of n-decane at 100 °C, mm²/s', source: 'CoolProp 8.0.0 at one atmosphere' }
