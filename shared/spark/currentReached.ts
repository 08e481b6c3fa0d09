import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coilCurrent } from './quantities.ts'

/** Current in a coil when its driver ends the charge: what was wanted, or what time and supply allowed. */
export const about = {
  name: 'Current at the spark',
  in: { wanted: role(coilCurrent, 'I_w', 'Current wanted in a coil'), allowed: role(coilCurrent, 'I_a', 'Current that time and supply allow') },
  out: coilCurrent,
  equation: 'min(wanted, allowed)',
  source: ['definition', 'a driver ends the charge at the current wanted'],
} as const satisfies About

export const currentReached = formula<typeof about>('current-reached', {}, ({ wanted, allowed }) => Math.min(wanted, allowed))
