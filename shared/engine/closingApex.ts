import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { apexAngle, portAngle } from './quantities.ts'

/** Where the trailing apex of a chamber stands when it has covered a port. */
export const about = {
  name: 'Apex that closes a port',
  in: { close: role(portAngle, 'θ_c', 'Port closed') },
  out: role(apexAngle, 'α_c', 'Rotor angle of the closing apex, from the long axis'),
  equation: 'pi / 6 + close / 3',
  source: ['derived', 'at smallest volume a chamber stands across the short axis, its apexes 60° of rotor angle to either side'],
} as const satisfies About

export const closingApex = formula<typeof about>('closing-apex', {}, ({ close }) => Math.PI / 6 + close / 3)
