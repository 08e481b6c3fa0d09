import { formula, type About } from '../formula/formula.ts'
import { fuelFlow } from '../fuel/quantities.ts'
import { power, specificConsumption } from './quantities.ts'

/** Fuel that a power asks for at a specific consumption. */
export const about = {
  name: 'Fuel for a power',
  in: { power, consumption: specificConsumption },
  out: fuelFlow,
  equation: 'power * consumption',
  source: ['definition', 'of specific fuel consumption, turned round'],
} as const satisfies About

export const fuelForPower = formula<typeof about>('fuel-for-power', {}, ({ power, consumption }) => power * consumption)
