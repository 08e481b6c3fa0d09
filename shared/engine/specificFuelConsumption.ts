import { formula, type About } from '../formula/formula.ts'
import { fuelFlow } from '../fuel/quantities.ts'
import { power, specificConsumption } from './quantities.ts'

/** Fuel burned for each unit of work at the shaft. */
export const about = {
  name: 'Brake specific fuel consumption',
  in: { fuelFlow, power },
  out: specificConsumption,
  equation: 'fuelFlow / power',
  source: ['definition', 'fuel mass flow over brake power'],
} as const satisfies About

export const specificFuelConsumption = formula<typeof about>('specific-fuel-consumption', {}, ({ fuelFlow: flow, power: brake }) => flow / brake)
