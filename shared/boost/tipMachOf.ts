import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { gasTemperature, tipMach, tipSpeed } from './quantities.ts'

/** Tip speed over the speed of sound of the air that enters. */
export const about = {
  name: 'Tip Mach number',
  in: { tipSpeed, temperature: gasTemperature },
  out: tipMach,
  constants: { airGasConstant, airHeatRatio },
  equation: 'tipSpeed / sqrt(airHeatRatio * airGasConstant * temperature)',
  source: ['moraal-kolmanovsky-1999', 'Mach number of the compressor’s rim'],
} as const satisfies About

export const tipMachOf = formula<typeof about>('tip-mach-of', {}, ({ tipSpeed: u, temperature }) => u / Math.sqrt(airHeatRatio.value * airGasConstant.value * temperature))
