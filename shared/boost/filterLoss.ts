import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { filterExponent, gasFlow, pressureLoss } from './quantities.ts'

/** Loss of a filter at another flow, from one reading. */
export const about = {
  name: 'Filter loss at a flow',
  in: { flow: gasFlow, measuredFlow: role(gasFlow, 'm_0', 'Flow at that reading'), measured: role(pressureLoss, 'Δp_0', 'Pressure loss that was measured'), exponent: filterExponent },
  out: pressureLoss,
  equation: 'measured * (flow / measuredFlow)^exponent',
  source: ['derived', 'loss of a cloth goes with a power of the speed of the air that meets it, at the same density'],
  notes: 'Source states no range. For a clean filter; dust adds loss long before it can be seen.',
} as const satisfies About

export const filterLoss = formula<typeof about>('filter-loss', {}, ({ flow, measuredFlow, measured, exponent }) => measured * (flow / measuredFlow) ** exponent)
