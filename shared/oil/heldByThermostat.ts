import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilTemperature } from './quantities.ts'

/** Oil temperature with a thermostat that leads oil past the cooler while it is cold. */
export const about = {
  name: 'Oil temperature with a thermostat',
  in: { cooled: role(oilTemperature, 'T_k', 'With all oil through the cooler'), opens: role(oilTemperature, 'T_t', 'Thermostat opens') },
  out: oilTemperature,
  equation: 'max(cooled, opens)',
  source: ['derived', 'an ideal thermostat'],
} as const satisfies About

export const heldByThermostat = formula<typeof about>('held-by-thermostat', {}, ({ cooled, opens }) => Math.max(cooled, opens))
