import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { effectiveness, gasTemperature } from './quantities.ts'

/** Effectiveness of a charge cooler from three temperatures. */
export const about = {
  name: 'Charge cooler effectiveness from temperatures',
  in: { inlet: role(gasTemperature, 'T_2', 'Temperature into the cooler'), outlet: role(gasTemperature, 'T_5', 'Temperature out of the cooler'), coolant: role(gasTemperature, 'T_k', 'Temperature of the cooling stream') },
  out: effectiveness,
  equation: '(inlet - outlet) / (inlet - coolant)',
  source: ['kays-london', 'definition of heat-exchanger effectiveness'],
  notes: 'Source states no range. The charge is the smaller heat-capacity stream; read all three after a minute of steady load.',
  sample: { inlet: [380, 480], outlet: [300, 370], coolant: [260, 299] },
} as const satisfies About

export const effectivenessFrom = formula<typeof about>('effectiveness-from', {}, ({ inlet, outlet, coolant }) => (inlet - outlet) / (inlet - coolant))
