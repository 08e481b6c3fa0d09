import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDose, premixShare, tankVolume } from './quantities.ts'

/** Oil share in the tank after a fill in which a volume of oil was poured. */
export const about = {
  name: 'Oil share after filling up',
  in: {
    poured: oilDose, added: role(tankVolume, 'V_a', 'Fuel filled in'), present: role(tankVolume, 'V_p', 'Fuel already in the tank'),
    presentShare: role(premixShare, 'x_p', 'Oil share of the fuel already there'),
  },
  out: premixShare,
  equation: '(poured + presentShare * present) / (present + added)',
  source: ['derived', 'conservation of oil; shares are of the fuel’s volume, the oil itself not counted'],
  sample: { added: [1e-3, 0.15] },
} as const satisfies About

export const premixShareAfter = formula<typeof about>('premix-share-after', {}, ({ poured, added, present, presentShare }) => (poured + presentShare * present) / (present + added))
