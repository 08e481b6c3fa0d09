import { formula, type About } from '../formula/formula.ts'
import { standardGravity } from '../formula/constants.ts'
import { rotorLoad, rotorMass, timesWeight } from './quantities.ts'

/** A load counted in weights of the part it comes from. */
export const about = {
  name: 'Load in weights of the rotor',
  in: { load: rotorLoad, mass: rotorMass },
  out: timesWeight,
  equation: 'load / (mass * standardGravity)',
  constants: { standardGravity },
  source: ['definition', 'load over weight'],
} as const satisfies About

export const weightsOf = formula<typeof about>('weights-of', {}, ({ load, mass }) => load / (mass * standardGravity.value))
