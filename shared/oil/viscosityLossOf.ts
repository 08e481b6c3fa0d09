import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { kinematicViscosity, viscosityLoss } from './quantities.ts'

/** Viscosity lost against fresh oil. */
export const about = {
  name: 'Loss of viscosity',
  in: { fresh: role(kinematicViscosity, 'ν_0', 'Viscosity of the fresh oil'), now: role(kinematicViscosity, 'ν', 'Viscosity now') },
  out: viscosityLoss,
  equation: '1 - now / fresh',
  source: ['definition', 'a relative difference'],
} as const satisfies About

export const viscosityLossOf = formula<typeof about>('viscosity-loss-of', {}, ({ fresh, now }) => 1 - now / fresh)
