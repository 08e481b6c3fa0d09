import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn } from '../engine/quantities.ts'
import { heatFlow, shareOfFuelOf } from './quantities.ts'

/** One term of the heat balance as a share of the fuel’s chemical power. */
export const about = {
  name: 'Share of the fuel’s energy',
  in: { part: role(heatFlow, 'Q', 'One term'), fuelPower: fuelPowerIn },
  out: shareOfFuelOf,
  equation: 'part / fuelPower',
  source: ['definition', 'share'],
} as const satisfies About

export const shareOfFuel = formula<typeof about>('share-of-fuel', {}, ({ part, fuelPower }) => part / fuelPower)
