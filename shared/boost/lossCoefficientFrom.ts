import { formula, type About } from '../formula/formula.ts'
import { gasDensity, gasFlow, lossCoefficient, pressureLoss } from './quantities.ts'

/** Loss coefficient of a passage from one measured pressure loss. */
export const about = {
  name: 'Loss coefficient from a measured loss',
  in: { loss: pressureLoss, flow: gasFlow, density: gasDensity },
  out: lossCoefficient,
  equation: 'loss * density / flow^2',
  source: ['derived', 'the pressure loss of a passage, turned round'],
  notes: 'Source states no range. One reading at high flow is worth more than several at low flow.',
} as const satisfies About

export const lossCoefficientFrom = formula<typeof about>('loss-coefficient-from', {}, ({ loss, flow, density }) => (loss * density) / (flow * flow))
