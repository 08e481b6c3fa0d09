import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { apexAngle, portAngle } from './quantities.ts'

/** Where the leading apex of a chamber stands when it begins to uncover a port. */
export const about = {
  name: 'Apex that opens a port',
  in: { open: role(portAngle, 'θ_o', 'Port opens') },
  out: role(apexAngle, 'α_o', 'Rotor angle of the opening apex, from the long axis'),
  equation: '5 * pi / 6 + open / 3',
  source: ['derived', 'at smallest volume a chamber stands across the short axis, its apexes 60° of rotor angle to either side'],
} as const satisfies About

export const openingApex = formula<typeof about>('opening-apex', {}, ({ open }) => (5 * Math.PI) / 6 + open / 3)
