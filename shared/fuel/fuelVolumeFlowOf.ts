import { formula, type About } from '../formula/formula.ts'
import { fuelDensity, fuelFlow, fuelVolumeFlow } from './quantities.ts'

/** Volume flow of a mass flow of fuel. */
export const about = {
  name: 'Fuel volume flow',
  in: { massFlow: fuelFlow, density: fuelDensity },
  out: fuelVolumeFlow,
  equation: 'massFlow / density',
  source: ['definition', 'mass over density'],
} as const satisfies About

export const fuelVolumeFlowOf = formula<typeof about>('fuel-volume-flow-of', {}, ({ massFlow, density }) => massFlow / density)
