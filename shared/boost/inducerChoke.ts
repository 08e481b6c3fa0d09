import { formula, type About } from '../formula/formula.ts'
import { airGasConstant, airHeatRatio } from '../formula/constants.ts'
import { gasFlow, gasPressure, gasTemperature, inducer, throatShare, turboSpeed } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Flow at which the throat of a turning inducer chokes. */
export const about = {
  name: 'Choking flow of an inducer',
  in: { inducer, throat: throatShare, speed: turboSpeed, temperature: role(gasTemperature, 'T_1', 'Compressor inlet temperature'), pressure: role(gasPressure, 'p_1', 'Compressor inlet pressure') },
  out: gasFlow,
  constants: { airGasConstant, airHeatRatio },
  equation: 'throat * pi * inducer^2 / 4 * pressure * sqrt(airHeatRatio / (airGasConstant * temperature)) * ((2 + (airHeatRatio - 1) * (9 / 64 * speed^2 * inducer^2) / (airHeatRatio * airGasConstant * temperature)) / (airHeatRatio + 1))^((airHeatRatio + 1) / (2 * (airHeatRatio - 1)))',
  source: ['dixon-turbomachinery', 'section 7.10, choking of an impeller: flow over area rises with blade speed'],
  notes: 'Blade speed at three quarters of the inducer’s radius, the middle of its area for a usual hub. How much of the face is throat is no published number: about half, by wheels whose flow is known.',
} as const satisfies About

const g = airHeatRatio.value

export const inducerChoke = formula<typeof about>('inducer-choke', {}, ({ inducer: d, throat, speed, temperature, pressure }) => {
  const soundSquared = g * airGasConstant.value * temperature
  const blade = (9 / 64) * speed ** 2 * d ** 2
  return ((throat * Math.PI * d * d) / 4) * pressure * Math.sqrt(g / (airGasConstant.value * temperature)) * ((2 + ((g - 1) * blade) / soundSquared) / (g + 1)) ** ((g + 1) / (2 * (g - 1)))
})
