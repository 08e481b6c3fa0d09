import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { viscosityAt100, viscosityLoss } from './quantities.ts'

/** Viscosity that is left when shear has done all it does. */
export const about = {
  name: 'Viscosity after all shear',
  in: { fresh: role(viscosityAt100, 'ν_0', 'Fresh oil at 100 °C'), lost: role(viscosityLoss, 'L_∞', 'Loss it settles at') },
  out: viscosityAt100,
  equation: 'fresh * (1 - lost)',
  source: ['definition', 'a share taken off'],
} as const satisfies About

export const shearedAtLast = formula<typeof about>('sheared-at-last', {}, ({ fresh, lost }) => fresh * (1 - lost))
