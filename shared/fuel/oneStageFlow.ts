import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { injectorMassFlow } from './quantities.ts'

/** Mass flow of one rotor's injectors when a single stage of the same total does all. */
export const about = {
  name: 'Flow of both stages as one',
  in: { primaryFlow: role(injectorMassFlow, 'm_1', 'Mass flow of the primaries'), secondaryFlow: role(injectorMassFlow, 'm_2', 'Mass flow of the secondaries') },
  out: role(injectorMassFlow, 'm_12', 'Mass flow of one stage of the same total'),
  equation: 'primaryFlow + secondaryFlow',
  source: ['definition', 'a sum'],
} as const satisfies About

export const oneStageFlow = formula<typeof about>('one-stage-flow', {}, ({ primaryFlow: one, secondaryFlow: two }) => one + two)
