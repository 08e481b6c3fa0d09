import { formula, type About } from '../formula/formula.ts'
import { gasTemperature } from '../boost/quantities.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { soundSpeed } from './quantities.ts'

/** Speed of sound in air. */
export const about = {
  name: 'Speed of sound in air',
  in: { temperature: gasTemperature },
  out: soundSpeed,
  equation: 'sqrt(airHeatRatio * airGasConstant * temperature)',
  constants: { airHeatRatio, airGasConstant },
  source: ['iso-2533', 'equation of the speed of sound'],
  notes: 'Constant ratio of specific heats: good to 0.5 % up to 150 °C; in exhaust gas use its own ratio and gas constant.',
} as const satisfies About

export const speedOfSound = formula<typeof about>('speed-of-sound', {}, ({ temperature }) => Math.sqrt(airHeatRatio.value * airGasConstant.value * temperature))
