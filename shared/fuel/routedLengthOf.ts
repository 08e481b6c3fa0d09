import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bendRadius, hoseSlack, lineLength, turnedAngle } from './quantities.ts'

/** Length of hose along straights and arcs, with slack for its shortening under pressure. */
export const about = {
  name: 'Length of a routed hose',
  in: { straight: role(lineLength, 'l_0', 'Straight parts, summed'), turned: role(turnedAngle, 'α', 'Bends, summed'), radius: bendRadius, slack: hoseSlack },
  out: role(lineLength, 'l', 'Length to cut'),
  equation: '(straight + turned * radius) / (1 - slack)',
  source: ['faa-ac43', 'figure 9-9: a hose changes its length under pressure by +2 to −4 %'],
} as const satisfies About

export const routedLengthOf = formula<typeof about>('routed-length-of', {}, ({ straight, turned, radius, slack }) => (straight + turned * radius) / (1 - slack))
