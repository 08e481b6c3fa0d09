import { formula, type About } from '../formula/formula.ts'
import { mixtureAt } from './mixtureTable.ts'
import { glycolMass, glycolVolume } from './quantities.ts'

/** Share of glycol by mass, from the share by volume that a builder mixes. */
export const about = {
  name: 'Glycol by mass from glycol by volume',
  in: { glycol: glycolVolume },
  out: glycolMass,
  table: 'Straight lines between the table’s shares by volume.',
  nodes: [{ in: { glycol: 0 }, out: 0 }, { in: { glycol: 0.181 }, out: 0.2 }, { in: { glycol: 0.476 }, out: 0.5 }, { in: { glycol: 0.578 }, out: 0.6 }],
  source: ['ashrae-2001', 'freezing points of aqueous ethylene glycol, both shares'],
} as const satisfies About

export const glycolMassShare = formula<typeof about>('glycol-mass-share', { glycol: [0, 0.578] }, ({ glycol }) => mixtureAt(2, glycol * 100) / 100)
