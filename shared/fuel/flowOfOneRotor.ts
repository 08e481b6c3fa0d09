import { rotors } from '../engine/quantities.ts'
import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelVolumeFlow, stageShare } from './quantities.ts'

/** Fuel that one stage of one rotor takes, as a mean flow. */
export const about = {
  name: 'Flow of one stage of one rotor',
  in: { used: role(fuelVolumeFlow, 'Q_f', 'Fuel used by the engine'), share: stageShare, rotors },
  out: role(fuelVolumeFlow, 'Q_s', 'Flow of one stage of one rotor'),
  equation: 'used * share / rotors',
  source: ['definition', 'a share of a whole, parted evenly'],
} as const satisfies About

export const flowOfOneRotor = formula<typeof about>('flow-of-one-rotor', {}, ({ used, share, rotors: number }) => (used * share) / number)
