import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelVolumeFlow, starvedTime, tankVolume } from './quantities.ts'

/** Fuel that a surge pot must hold to bridge the time in which its own feed draws air. */
export const about = {
  name: 'Volume of a surge pot',
  in: { used: fuelVolumeFlow, starved: starvedTime, kept: role(tankVolume, 'V_k', 'Fuel that must stay over its outlet') },
  out: role(tankVolume, 'V_pot', 'Volume of the surge pot'),
  equation: 'used * starved + kept',
  source: ['derived', 'conservation of volume: what returns comes back to the pot, so it loses only what the engine burns'],
  notes: 'The return has to end in the pot. If it ends in the tank, the pot loses all that is pumped.',
} as const satisfies About

export const potVolumeOf = formula<typeof about>('pot-volume-of', {}, ({ used, starved, kept }) => used * starved + kept)
