import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { kPa } from '../quantity/si.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { lossCoefficientFrom } from './lossCoefficientFrom.ts'
import { gasDensity, gasFlow, lossCoefficient, pressureLoss } from './quantities.ts'

export default calculation({
  id: 'pressure-loss-of-duct', title: 'Pressure loss of a duct', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', cautions: ['model-only'],
  asks: 'What pressure does this passage cost at another flow, from one loss that was measured?',
  in: {
    measured: free(pressureLoss, kPa(3), 'Pressure loss that was measured'), measuredFlow: free(gasFlow, 0.3, 'Mass flow at that reading'), measuredDensity: free(gasDensity, 1.18, 'Gas density at that reading'),
    flow: engine.air, density: free(gasDensity, 1.18, 'Gas density now'),
  },
  out: { coefficient: lossCoefficient, loss: pressureLoss },
  curve: ['flow', 'loss'],
  answer({ measured, measuredFlow, measuredDensity, flow, density }) {
    const coefficient = lossCoefficientFrom({ loss: measured, flow: measuredFlow, density: measuredDensity })
    return { coefficient, loss: flowPressureLoss({ coefficient, flow, density }) }
  },
  says: () => 'The passage has a loss coefficient of {coefficient}; at {flow} it costs {loss}. Twice the flow costs four times as much, twice the density half.',
  leavesOut: 'Flow so slow that it is smooth, and losses so large that density changes along the way.',
})
