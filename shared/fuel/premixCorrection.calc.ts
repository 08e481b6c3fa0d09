import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { litre } from '../quantity/si.ts'
import { premix, tank } from './fields.ts'
import { fuelToThin } from './fuelToThin.ts'
import { oilToEnrich } from './oilToEnrich.ts'
import { oilDose, premixShare, tankVolume } from './quantities.ts'
import { restOf } from './restOf.ts'
import { shareOfPour } from './shareOfPour.ts'

export default calculation({
  id: 'premix-correction',
  title: 'Correcting premix already in the tank',
  theme: 'oil',
  asks: 'The tank has the wrong share of oil: what do I add?',
  article: 'premix-arithmetic-and-dosing',
  cautions: ['fuel-additives-skin', 'fuel-vapour', 'emission-law', 'model-only'],
  in: { wanted: premix, present: free(tankVolume, litre(30), 'Fuel in the tank'), poured: free(oilDose, litre(0.3), 'Oil that is in it'), tank },
  out: { share: role(premixShare, 'x_p', 'Oil share now'), oil: role(oilDose, 'V_o', 'Oil to add'), fuel: role(tankVolume, 'V_a', 'Plain fuel to add'), room: role(tankVolume, 'V_r', 'Room left in the tank afterwards') },
  curve: ['poured', 'fuel'],
  answer({ wanted, present, poured, tank: whole }) {
    if (!(present > 0)) throw new NoAnswer('premix-correction', 'There is no fuel in the tank: mix a new fill instead.')
    if (!(wanted > 0)) throw new NoAnswer('premix-correction', 'No oil is wanted: no amount of plain fuel takes out what is in. Drain the tank.')
    const share = shareOfPour({ poured, fuel: present })
    const fuel = fuelToThin({ present, presentShare: share, wanted })
    return { share, oil: oilToEnrich({ present, presentShare: share, wanted }), fuel, room: restOf({ total: restOf({ total: whole, part: present }), part: fuel }) }
  },
  says: ({ fuel, oil, room }) => fuel > 0
    ? room < 0 ? 'The tank holds {share} of oil where {wanted} is wanted: {fuel} of plain fuel would thin it, more than there is room for. Drain some first.' : 'The tank holds {share} of oil where {wanted} is wanted: add {fuel} of plain fuel, which leaves {room} of room.'
    : oil > 0 ? 'The tank holds {share} of oil where {wanted} is wanted: pour in {oil} and let the pump mix it.' : 'The tank holds the wanted {wanted}: add nothing.',
  leavesOut: 'Oil that lies unmixed at the bottom until the pump has sent the tank round once.',
})
