import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilSpare, sumpOil } from './quantities.ts'

/** Oil in the sump beyond what the pick-up needs. */
export const about = {
  name: 'Usable oil',
  in: { volume: sumpOil, least: role(sumpOil, 'V_min', 'Least that keeps it covered') },
  out: oilSpare,
  equation: 'volume - least',
  source: ['definition', 'a difference'],
} as const satisfies About

export const oilToSpare = formula<typeof about>('oil-to-spare', {}, ({ volume, least }) => volume - least)
