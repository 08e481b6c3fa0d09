import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { clampLoad, clampShare } from './quantities.ts'

/** Clamp load that is left of the new, standing one. `F_0 y`, newtons. */
export const about = {
  name: 'Clamp load left',
  in: { fresh: role(clampLoad, 'F_0', 'Clamp load when new'), left: clampShare },
  out: clampLoad,
  equation: 'fresh * left',
  source: ['definition', 'share of the clamp load'],
} as const satisfies About

export const clampLeft = formula<typeof about>('clamp-left', {}, ({ fresh, left }) => fresh * left)
