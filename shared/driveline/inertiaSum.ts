import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { inertia } from './quantities.ts'

/** Inertia of what turns together on one shaft: the sum of its parts, kg m². */
export const about = {
  name: 'Inertia on the shaft',
  in: { shaft: role(inertia, 'J_1', 'Shaft, rotors and pulleys'), flywheel: role(inertia, 'J_2', 'Flywheel'), clutch: role(inertia, 'J_3', 'Clutch') },
  out: inertia,
  equation: 'shaft + flywheel + clutch',
  source: ['definition', 'moments of inertia about one axis add'],
  notes: 'The rotors turn at a third of the shaft’s speed but also circle with it: their inertia at the shaft is given as one number.',
} as const satisfies About

export const inertiaSum = formula<typeof about>('inertia-sum', {}, ({ shaft, flywheel, clutch }) => shaft + flywheel + clutch)
