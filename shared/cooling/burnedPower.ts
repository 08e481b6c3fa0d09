import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelPowerIn } from '../engine/quantities.ts'
import { heatFlow } from './quantities.ts'

/** Heat released, where the fuel’s power and what is left unburned are known. */
export const about = {
  name: 'Heat released, from what is left unburned',
  in: { fuelPower: fuelPowerIn, unburned: role(heatFlow, 'Q_u', 'Chemical power left unburned') },
  out: role(heatFlow, 'Q_r', 'Heat released'),
  equation: 'fuelPower - unburned',
  source: ['definition', 'the rest of the lower heating value'],
  sample: { fuelPower: [2e6, 3e6] },
} as const satisfies About

export const burnedPower = formula<typeof about>('burned-power', {}, ({ fuelPower, unburned }) => fuelPower - unburned)
