import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { premixShare, tankVolume } from './quantities.ts'

/** Plain fuel to add so that the oil share falls to the wanted one. */
export const about = {
  name: 'Fuel that thins premix',
  in: { present: role(tankVolume, 'V_p', 'Fuel there'), presentShare: role(premixShare, 'x_p', 'Oil share there'), wanted: role(premixShare, 'x_o', 'Wanted oil share') },
  out: role(tankVolume, 'V_a', 'Plain fuel to add'),
  equation: 'present * max(0, presentShare / wanted - 1)',
  sample: { wanted: [0.001, 0.05] },
  source: ['derived', 'conservation of oil; shares are of the fuel’s volume, the oil itself not counted'],
} as const satisfies About

export const fuelToThin = formula<typeof about>('fuel-to-thin', {}, ({ present, presentShare, wanted }) => present * Math.max(0, presentShare / wanted - 1))
