import { formula, type About } from '../formula/formula.ts'
import { boilingPointOf, glycolVolume, systemPressure } from './quantities.ts'
import { glycolMassShare } from './glycolMassShare.ts'
import { waterBoilingTemperature } from './waterBoilingTemperature.ts'
import { waterMoleShare } from './waterMoleShare.ts'
import { waterPressureInMixture } from './waterPressureInMixture.ts'

/** Temperature at which the bulk of the coolant boils under a given pressure. Hot spots in the housing boil sooner. */
export const about = {
  name: 'Boiling point of glycol and water',
  in: { pressure: systemPressure, glycol: glycolVolume },
  out: boilingPointOf,
  steps: [
    'Share by volume to share by mass, by the mixture table.',
    'Share by mass to molecules of water among all.',
    'Raoult: the water must reach the pressure divided by its mole share.',
    'Temperature at which pure water boils at that pressure.',
  ],
  source: ['raoult', 'ideal solution, with water by IAPWS-IF97'],
  notes: 'Bulk only. Agrees with the boiling points ASHRAE prints for atmospheric pressure to about 1 K.',
} as const satisfies About

export const coolantBoilingPoint = formula<typeof about>('coolant-boiling-point', { glycol: [0, 0.6] }, ({ pressure, glycol }) =>
  waterBoilingTemperature({ pressure: waterPressureInMixture({ pressure, water: waterMoleShare({ glycol: glycolMassShare({ glycol }) }) }) }))
