import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelSpread, injectorsPerRotor, stageShare } from './quantities.ts'

/** How far the fuel of one rotor is usually off when injectors are off by chance. */
export const about = {
  name: 'Usual spread of a set',
  in: {
    share: stageShare, primary: role(fuelSpread, 's_1', 'Spread of the set of primaries'), secondary: role(fuelSpread, 's_2', 'Spread of the set of secondaries'),
    primaries: injectorsPerRotor, secondaries: role(injectorsPerRotor, 'z_2', 'Secondaries per rotor'),
  },
  out: role(fuelSpread, 's_q', 'Fuel of a rotor off by, root of squares'),
  equation: 'sqrt(((1 - share) * primary)^2 / primaries + (share * secondary)^2 / max(secondaries, 1))',
  sample: { primaries: [1, 4] },
  source: ['iso-gum', 'independent deviations add as squares; the mean of n is off by the root of n less'],
} as const satisfies About

export const setSpreadSquares = formula<typeof about>('set-spread-squares', {}, ({ share, primary, secondary, primaries, secondaries }) =>
  Math.sqrt(((1 - share) * primary) ** 2 / primaries + (share * secondary) ** 2 / Math.max(secondaries, 1)))
