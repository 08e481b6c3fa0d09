import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { displacement, quotedDisplacement, rotors } from './quantities.ts'

/** The three ways in which the displacement of one engine is quoted. */
export const about = {
  name: 'Displacement by its three conventions',
  in: { displacement, rotors },
  out: {
    oneTurn: role(quotedDisplacement, 'V_1', 'One chamber per rotor: what one shaft turn takes in'),
    twoTurns: role(quotedDisplacement, 'V_2', 'Two shaft turns: what a four-stroke of this figure takes in'),
    threeTurns: role(quotedDisplacement, 'V_3', 'All chambers: three shaft turns'),
  },
  equation: { oneTurn: 'displacement * rotors', twoTurns: '2 * displacement * rotors', threeTurns: '3 * displacement * rotors' },
  source: ['yamamoto-1981', 'displacement and its comparison with reciprocating engines'],
  notes: 'The air is the same; only the figure changes. Always ask which one a figure follows.',
} as const satisfies About

export const quotedDisplacements = formula<typeof about>('quoted-displacements', {}, ({ displacement: chamber, rotors: count }) => ({
  oneTurn: chamber * count, twoTurns: 2 * chamber * count, threeTurns: 3 * chamber * count,
}))
