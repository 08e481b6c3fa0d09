import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn, releasedShareOf } from '../engine/quantities.ts'
import { heatFlow } from './quantities.ts'

/** Chemical power that leaves in the exhaust as unburned and half-burned fuel. */
export const about = {
  name: 'Chemical power left unburned',
  in: { fuelPower: fuelPowerIn, releasedShare: releasedShareOf },
  out: role(heatFlow, 'Q_u', 'Chemical power left unburned'),
  equation: 'fuelPower * (1 - releasedShare)',
  source: ['definition', 'what the released share leaves'],
} as const satisfies About

export const unburnedHeat = formula<typeof about>('unburned-heat', {}, ({ fuelPower, releasedShare }) => fuelPower * (1 - releasedShare))
