import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { litre, lPerH } from '../quantity/si.ts'
import { at } from './point.ts'
import { potVolumeOf } from './potVolumeOf.ts'
import { fuelVolumeFlow, starvedTime, tankVolume } from './quantities.ts'
import { refillTimeOf } from './refillTimeOf.ts'

export default calculation({
  id: 'surge-pot',
  title: 'Surge pot and lift pump',
  theme: 'fuel',
  asks: 'How large a pot bridges the corners in which the pick-up draws air, and does the lift pump fill it up again?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'electrical', 'model-only'],
  in: {
    used: at.volumeFlow, pumped: at.pumpFlow, starved: free(starvedTime, 8, 'Longest time the pick-up draws air'), kept: free(tankVolume, litre(0.5), 'Fuel that must stay over its outlet'), lift: free(fuelVolumeFlow, lPerH(400), 'Flow of the lift pump'),
  },
  out: { volume: role(tankVolume, 'V_pot', 'Volume of the surge pot'), toTank: role(tankVolume, 'V_pot2', 'Volume if the return ends in the tank'), refill: role(starvedTime, 't_r', 'Time to fill up again') },
  curve: ['starved', 'volume'],
  answer({ used, pumped, starved, kept, lift }) {
    if (!(lift > used)) throw new NoAnswer('surge-pot', 'The lift pump gives no more than the engine burns at full load: the pot runs empty however large it is.')
    return { volume: potVolumeOf({ used, starved, kept }), toTank: potVolumeOf({ used: pumped, starved, kept }), refill: refillTimeOf({ used, starved, lift }) }
  },
  says: () => 'With the return into the pot, {volume} bridge {starved} at full load and are full again {refill} later. With the return into the tank it would take {toTank}.',
  leavesOut: 'Foam, vapour that has to leave by the vent, and corners that follow sooner than the pot fills.',
})
