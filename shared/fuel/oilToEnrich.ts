import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDose, premixShare, tankVolume } from './quantities.ts'

/** Oil to pour in so that the oil share rises to the wanted one. */
export const about = {
  name: 'Oil that is missing',
  in: { present: role(tankVolume, 'V_p', 'Fuel there'), presentShare: role(premixShare, 'x_p', 'Oil share there'), wanted: role(premixShare, 'x_o', 'Wanted oil share') },
  out: oilDose,
  equation: 'present * max(0, wanted - presentShare)',
  source: ['derived', 'conservation of oil; shares are of the fuel’s volume, the oil itself not counted'],
} as const satisfies About

export const oilToEnrich = formula<typeof about>('oil-to-enrich', {}, ({ present, presentShare, wanted }) => present * Math.max(0, wanted - presentShare))
