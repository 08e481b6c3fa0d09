import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airTemperature } from '../engine/quantities.ts'
import { capacityRateOf, coreAirTemperatureOf, coverageOf, heatFlow } from './quantities.ts'


/** Air that meets the radiator, warmed by the part of the charge cooler’s heat that is given to it. */
export const about = {
  name: 'Air in front of the radiator',
  in: { outside: airTemperature, heat: role(heatFlow, 'Q_cc', 'Heat of the charge cooler'), coverage: coverageOf, air: role(capacityRateOf, 'C_a', 'Capacity rate of the air') },
  out: coreAirTemperatureOf,
  equation: 'outside + coverage * heat / air',
  source: ['derived', 'first law, mean over the face'],
  notes: 'A mean: air behind the charge cooler is warmer, the rest is as outside. For a radiator of one conductance over its face the mean gives the same heat.',
} as const satisfies About

export const warmedAir = formula<typeof about>('warmed-air', {}, ({ outside, heat, coverage, air }) => outside + (coverage * heat) / air)
