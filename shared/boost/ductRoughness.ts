import { formula, type About } from '../formula/formula.ts'
import { relativeRoughness, wallRoughness } from '../fuel/quantities.ts'
import { ductBore } from './quantities.ts'

/** Roughness of a duct’s wall over its bore. */
export const about = {
  name: 'Relative roughness of a duct',
  in: { roughness: wallRoughness, bore: ductBore },
  out: relativeRoughness,
  equation: 'roughness / bore',
  source: ['definition', 'roughness over bore'],
} as const satisfies About

export const ductRoughness = formula<typeof about>('duct-roughness', {}, ({ roughness, bore }) => roughness / bore)
