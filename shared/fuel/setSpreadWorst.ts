import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelSpread, stageShare } from './quantities.ts'

/** Most that the fuel of one rotor can be off when all its injectors are off the same way. */
export const about = {
  name: 'Worst spread of a set',
  in: { share: stageShare, primary: role(fuelSpread, 's_1', 'Spread of the set of primaries'), secondary: role(fuelSpread, 's_2', 'Spread of the set of secondaries') },
  out: role(fuelSpread, 's_w', 'Fuel of a rotor off by, at worst'),
  equation: '(1 - share) * primary + share * secondary',
  source: ['derived', 'deviations of the same sign add by their share of the fuel'],
} as const satisfies About

export const setSpreadWorst = formula<typeof about>('set-spread-worst', {}, ({ share, primary, secondary }) => (1 - share) * primary + share * secondary)
