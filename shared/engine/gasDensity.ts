import { formula, type About } from '../formula/formula.ts'
import { airGasConstant } from '../formula/constants.ts'
import { gasTemperature } from '../boost/quantities.ts'
import { airDensity, dryPressure } from '../media/quantities.ts'

/** Density of dry air, or of the dry part of moist air when its own share of the pressure is put in. */
export const about = {
  name: 'Density of dry air',
  in: { pressure: dryPressure, temperature: gasTemperature },
  out: airDensity,
  equation: 'pressure / (airGasConstant * temperature)',
  constants: { airGasConstant },
  source: ['iso-2533', 'equation of state of a perfect gas'],
  notes: 'Source states no range here. Ideal gas: within 0.1 % at the pressures and temperatures of a manifold.',
} as const satisfies About

export const gasDensity = formula<typeof about>('gas-density', {}, ({ pressure, temperature }) => pressure / (airGasConstant.value * temperature))
