import { formula, type About } from '../formula/formula.ts'
import { transferUnitsOf } from '../cooling/quantities.ts'
import { transferUnitsFor } from '../cooling/transferUnitsFor.ts'
import { role } from '../quantity/quantity.ts'
import { coolingAir, effectiveness, gasFlow } from './quantities.ts'

/** Transfer units of a charge cooler at its rating, counted on the charge. */
export const about = {
  name: 'Transfer units of a charge cooler',
  in: { effectiveness: role(effectiveness, 'ε_0', 'Rated effectiveness'), flow: role(gasFlow, 'm_0', 'Charge flow of the rating'), air: role(coolingAir, 'm_k0', 'Cooling air of the rating') },
  out: transferUnitsOf,
  steps: [
    'The weaker stream is the smaller flow: both are air. Its effectiveness is the rated one, times charge over cooling air where the charge is the stronger.',
    'Find the transfer units of a cross flow with both streams unmixed that has it; count them on the charge.',
  ],
  source: ['kays-london', 'chapter 2, solved backwards'],
} as const satisfies About

export const coolerUnitsFrom = formula<typeof about>('cooler-units-from', {}, ({ effectiveness: rated, flow, air }) => flow <= air
  ? transferUnitsFor({ arrangement: 'crossUnmixed', effectiveness: rated, ratio: flow / air })
  : (transferUnitsFor({ arrangement: 'crossUnmixed', effectiveness: (rated * flow) / air, ratio: air / flow }) * air) / flow)
