import { formula, type About } from '../formula/formula.ts'
import { gasSpecificHeat, heatRatio, specificGasConstant } from './quantities.ts'

/** Specific gas constant that belongs to a specific heat and a ratio of specific heats. */
export const about = {
  name: 'Gas constant from specific heats',
  in: { specificHeat: gasSpecificHeat, heatRatio },
  out: specificGasConstant,
  equation: 'specificHeat * (heatRatio - 1) / heatRatio',
  source: ['derived', 'ideal gas: the specific heats differ by the gas constant'],
} as const satisfies About

export const gasConstantFrom = formula<typeof about>('gas-constant-from', {}, ({ specificHeat, heatRatio: gamma }) => (specificHeat * (gamma - 1)) / gamma)
