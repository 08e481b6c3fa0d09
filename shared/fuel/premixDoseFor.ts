import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDose, premixShare, tankVolume } from './quantities.ts'

/** Oil to pour in when filling up, with or without oil in the fuel that is already there. */
export const about = {
  name: 'Oil to add when filling up',
  in: {
    wanted: role(premixShare, 'x_o', 'Wanted oil share'), added: role(tankVolume, 'V_a', 'Fuel filled in'),
    present: role(tankVolume, 'V_p', 'Fuel already in the tank'), presentShare: role(premixShare, 'x_p', 'Oil share of the fuel already there'),
  },
  out: oilDose,
  equation: 'wanted * (present + added) - presentShare * present',
  source: ['derived', 'conservation of oil; shares are of the fuel’s volume, the oil itself not counted'],
  notes: 'Less than nothing means that the tank already holds more oil than the fill needs.',
} as const satisfies About

export const premixDoseFor = formula<typeof about>('premix-dose-for', {}, ({ wanted, added, present, presentShare }) => wanted * (present + added) - presentShare * present)
