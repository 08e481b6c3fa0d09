import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { ringMass } from './quantities.ts'

/** Mass of three rings that make one flywheel, kilograms. */
export const about = {
  name: 'Mass of the flywheel',
  in: { rim: role(ringMass, 'm_1', 'Mass of the rim'), web: role(ringMass, 'm_2', 'Mass of the web'), hub: role(ringMass, 'm_3', 'Mass of the hub') },
  out: ringMass,
  equation: 'rim + web + hub',
  source: ['definition', 'masses add'],
} as const satisfies About

export const massSum = formula<typeof about>('mass-sum', {}, ({ rim, web, hub }) => rim + web + hub)
