import { formula, type About } from '../formula/formula.ts'
import { fuelDensity, injectorFlow, injectorMassFlow, injectorsPerRotor } from './quantities.ts'

/** Mass that the open injectors of one stage give one rotor. */
export const about = {
  name: 'Mass flow of a stage',
  in: { flow: injectorFlow, number: injectorsPerRotor, density: fuelDensity },
  out: injectorMassFlow,
  equation: 'flow * number * density',
  source: ['definition', 'mass is volume times density'],
} as const satisfies About

export const stageMassFlow = formula<typeof about>('stage-mass-flow', {}, ({ flow, number, density }) => flow * number * density)
