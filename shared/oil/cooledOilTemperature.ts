import { airTemperature } from '../engine/quantities.ts'
import { capacityRateOf, effectivenessValue, heatFlow } from '../cooling/quantities.ts'
import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilTemperature } from './quantities.ts'

/** Temperature at which oil leaves its cooler when it gives off all the heat that it took up. */
export const about = {
  name: 'Oil temperature behind its cooler',
  in: { air: airTemperature, heat: heatFlow, effectiveness: effectivenessValue, oilRate: role(capacityRateOf, 'C_o', 'Capacity rate of the oil'), airRate: role(capacityRateOf, 'C_a', 'Capacity rate of the air') },
  out: oilTemperature,
  equation: 'air + heat / (effectiveness * min(oilRate, airRate)) - heat / oilRate',
  source: ['derived', 'effectiveness gives the oil into the cooler, its capacity rate what it loses there'],
  notes: 'Steady. Air comes at the temperature outside: behind another core it is warmer.',
} as const satisfies About

export const cooledOilTemperature = formula<typeof about>('cooled-oil-temperature', {}, ({ air, heat, effectiveness, oilRate, airRate }) =>
  air + heat / (effectiveness * Math.min(oilRate, airRate)) - heat / oilRate)
