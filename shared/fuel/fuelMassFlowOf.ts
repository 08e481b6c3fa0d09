import { formula, type About } from '../formula/formula.ts'
import { fuelDensity, fuelFlow, fuelVolumeFlow } from './quantities.ts'

/** Mass flow of a volume flow of fuel. */
export const about = {
  name: 'Fuel mass flow',
  in: { volumeFlow: fuelVolumeFlow, density: fuelDensity },
  out: fuelFlow,
  equation: 'volumeFlow * density',
  source: ['definition', 'volume times density'],
} as const satisfies About

export const fuelMassFlowOf = formula<typeof about>('fuel-mass-flow-of', {}, ({ volumeFlow, density }) => volumeFlow * density)
