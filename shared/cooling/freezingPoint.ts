import { formula, type About } from '../formula/formula.ts'
import { degC } from '../quantity/si.ts'
import { mixtureAt } from './mixtureTable.ts'
import { freezingPointOf, glycolVolume } from './quantities.ts'

/** Temperature at which the first ice forms. Below it comes slush, then burst parts. */
export const about = {
  name: 'Freezing point of glycol and water',
  in: { glycol: glycolVolume },
  out: freezingPointOf,
  table: 'Straight lines between the table’s shares by volume.',
  nodes: [
    { in: { glycol: 0 }, out: degC(0) }, { in: { glycol: 0.306 }, out: degC(-16.2) }, { in: { glycol: 0.405 }, out: degC(-25.3) },
    { in: { glycol: 0.506 }, out: degC(-37.9) }, { in: { glycol: 0.578 }, out: degC(-48.3) },
  ],
  source: ['ashrae-2001', 'freezing points of aqueous ethylene glycol, to 57.8 % by volume'],
} as const satisfies About

export const freezingPoint = formula<typeof about>('freezing-point', { glycol: [0, 0.578] }, ({ glycol }) => 273.15 + mixtureAt(1, glycol * 100))
