import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { effectiveness, gasTemperature } from './quantities.ts'

/** Temperature of the charge behind its cooler. */
export const about = {
  name: 'Temperature after the charge cooler',
  in: { inlet: role(gasTemperature, 'T_2', 'Temperature into the cooler'), effectiveness, coolant: role(gasTemperature, 'T_k', 'Temperature of the cooling stream') },
  out: role(gasTemperature, 'T_5', 'Temperature out of the cooler'),
  equation: 'inlet - effectiveness * (inlet - coolant)',
  source: ['kays-london', 'definition of heat-exchanger effectiveness'],
  notes: 'Source states no range. The charge is the smaller heat-capacity stream.',
} as const satisfies About

export const cooledTemperature = formula<typeof about>('cooled-temperature', {}, ({ inlet, effectiveness: share, coolant }) => inlet - share * (inlet - coolant))
