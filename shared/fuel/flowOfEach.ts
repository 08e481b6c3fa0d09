import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { injectorFlow, injectorsPerRotor } from './quantities.ts'

/** Flow of each of a number of like injectors. */
export const about = {
  name: 'Flow of each injector',
  in: { together: role(injectorFlow, 'Q_z', 'Flow of all together'), number: injectorsPerRotor },
  out: injectorFlow,
  equation: 'together / number',
  sample: { number: [1, 4] },
  source: ['definition', 'an even part'],
} as const satisfies About

export const flowOfEach = formula<typeof about>('flow-of-each', {}, ({ together, number }) => together / number)
