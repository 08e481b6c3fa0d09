import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { heldTorque, reserveOver } from './quantities.ts'

/** What is held over what is asked. */
export const about = {
  name: 'Held over asked',
  in: { held: role(heldTorque, 'M_s', 'Held'), asked: role(heldTorque, 'M_max', 'Asked') },
  out: reserveOver,
  equation: 'held / asked',
  source: ['definition', 'a ratio'],
  sample: { held: [0, 5000], asked: [10, 5000] },
} as const satisfies About

export const heldOverAsked = formula<typeof about>('held-over-asked', {}, ({ held, asked }) => held / asked)
