import { formula, type About } from '../formula/formula.ts'
import { balancedMass, permissibleOffset, permissibleUnbalance } from './quantities.ts'

/** Residual unbalance that a part of this mass may keep. `m e_per`, kg m. */
export const about = {
  name: 'Permissible residual unbalance',
  in: { mass: balancedMass, offset: permissibleOffset },
  out: permissibleUnbalance,
  equation: 'mass * offset',
  source: ['iso-21940-11', 'clause 6, permissible residual unbalance'],
  notes: 'For the whole rotor; it is shared out over the planes by their distance from the centre of mass.',
} as const satisfies About

export const permissibleUnbalanceOf = formula<typeof about>('permissible-unbalance-of', {}, ({ mass, offset }) => mass * offset)
