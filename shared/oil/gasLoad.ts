import { manifoldPressure } from '../engine/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { flankArea, peakGasPressure, rotorLoad } from './quantities.ts'

/** Force of the gas on a rotor at its peak. */
export const about = {
  name: 'Gas load on a rotor',
  in: { peak: peakGasPressure, others: manifoldPressure, area: flankArea },
  out: rotorLoad,
  equation: '(peak - others) * area',
  sample: { peak: [10e5, 200e5] },
  source: ['derived', 'pressure on one flank less that on the other two, both taken at manifold pressure'],
} as const satisfies About

export const gasLoad = formula<typeof about>('gas-load', {}, ({ peak, others, area }) => (peak - others) * area)
