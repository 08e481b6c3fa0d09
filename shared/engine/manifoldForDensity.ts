import { formula, type About } from '../formula/formula.ts'
import { airGasConstant } from '../formula/constants.ts'
import { airDensity, vapourShareOfAir } from '../media/quantities.ts'
import { chargeTemperature, manifoldPressure } from './quantities.ts'

/** Manifold pressure at which the dry part of the air has a wanted density. */
export const about = {
  name: 'Manifold pressure for a density',
  in: { density: airDensity, temperature: chargeTemperature, share: vapourShareOfAir },
  out: manifoldPressure,
  equation: 'density * airGasConstant * temperature / (1 - share)',
  constants: { airGasConstant },
  source: ['iso-2533', 'equation of state of a perfect gas, turned round; Dalton’s law for the vapour'],
} as const satisfies About

export const manifoldForDensity = formula<typeof about>('manifold-for-density', {}, ({ density, temperature, share }) => (density * airGasConstant.value * temperature) / (1 - share))
