import { formula, type About } from '../formula/formula.ts'
import { exhaustGasConstant } from '../formula/constants.ts'
import { gasSpecificHeat, heatRatio } from '../boost/quantities.ts'

/** Ratio of specific heats of rich exhaust gas. */
export const about = {
  name: 'Ratio of specific heats of exhaust gas',
  in: { specificHeat: gasSpecificHeat },
  out: heatRatio,
  equation: 'specificHeat / (specificHeat - exhaustGasConstant)',
  constants: { exhaustGasConstant },
  source: ['derived', 'ideal gas: the specific heats differ by the gas constant'],
  notes: 'Gas constant of petrol burned at lambda 0.85.',
} as const satisfies About

export const exhaustHeatRatio = formula<typeof about>('exhaust-heat-ratio', {}, ({ specificHeat }) => specificHeat / (specificHeat - exhaustGasConstant.value))
