import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coolantTemperatureOf, metalTemperatureOf, storedPerKelvin } from './quantities.ts'

/** Temperature at which metal and coolant meet when nothing carries heat away. */
export const about = {
  name: 'Temperature after a stop, evened out',
  in: { metal: metalTemperatureOf, metalCapacity: role(storedPerKelvin, 'C_s', 'Heat capacity of the metal'), coolant: coolantTemperatureOf, coolantCapacity: role(storedPerKelvin, 'C_k', 'Heat capacity of the coolant') },
  out: role(coolantTemperatureOf, 'T_e', 'Coolant and metal, evened out'),
  equation: '(metal * metalCapacity + coolant * coolantCapacity) / (metalCapacity + coolantCapacity)',
  source: ['derived', 'first law: what the metal gives, the coolant takes'],
  notes: 'Losses to the bay make the true peak a little lower; local metal near the plugs makes boiling there earlier.',
} as const satisfies About

export const evenTemperature = formula<typeof about>('even-temperature', {}, ({ metal, metalCapacity, coolant, coolantCapacity }) => (metal * metalCapacity + coolant * coolantCapacity) / (metalCapacity + coolantCapacity))
