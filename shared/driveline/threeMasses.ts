import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { ringMass } from './quantities.ts'

/** Mass of parts together. */
export const about = {
  name: 'Mass of three rings',
  in: { first: role(ringMass, 'm_1', 'Hub'), second: role(ringMass, 'm_2', 'Web'), third: role(ringMass, 'm_3', 'Rim') },
  out: ringMass,
  equation: 'first + second + third',
  source: ['definition', 'masses add'],
} as const satisfies About

export const threeMasses = formula<typeof about>('three-masses', {}, ({ first, second, third }) => first + second + third)
