import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { boiledMassOf, boilingHeatOf, boilingPointOf, coolantTemperatureOf, storedPerKelvin } from './quantities.ts'

/** Coolant that boils away when metal and coolant would even out above the boiling point. */
export const about = {
  name: 'Coolant boiled away after a stop',
  in: { even: role(coolantTemperatureOf, 'T_e', 'Evened out, were there no boiling'), boiling: boilingPointOf, metalCapacity: role(storedPerKelvin, 'C_s', 'Heat capacity of the metal'), coolantCapacity: role(storedPerKelvin, 'C_k', 'Heat capacity of the coolant'), heat: boilingHeatOf },
  out: boiledMassOf,
  equation: '(max(even, boiling) - boiling) * (metalCapacity + coolantCapacity) / heat',
  source: ['derived', 'first law: heat above the boiling point turns coolant into vapour'],
  notes: 'Most that can go: a cap that holds pressure above its setting, or heat lost to the bay, leaves less.',
} as const satisfies About

export const boiledAway = formula<typeof about>('boiled-away', {}, ({ even, boiling, metalCapacity, coolantCapacity, heat }) => ((Math.max(even, boiling) - boiling) * (metalCapacity + coolantCapacity)) / heat)
