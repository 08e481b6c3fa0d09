import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn, releasedShareOf } from '../engine/quantities.ts'
import { heatFlow } from './quantities.ts'

/** Heat that burning really releases: what is rich of stoichiometric finds no oxygen. */
export const about = {
  name: 'Heat released',
  in: { fuelPower: fuelPowerIn, releasedShare: releasedShareOf },
  out: role(heatFlow, 'Q_r', 'Heat released'),
  equation: 'fuelPower * releasedShare',
  source: ['definition', 'share of the lower heating value'],
} as const satisfies About

export const releasedHeat = formula<typeof about>('released-heat', {}, ({ fuelPower, releasedShare }) => fuelPower * releasedShare)
