import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airPressure, manifoldPressure } from '../engine/quantities.ts'
import { railPressure } from './quantities.ts'

/** Pressure, against outside air, that a regulator holds when its spring side sees the manifold: it rises one for one with boost. */
export const about = {
  name: 'Pressure held by a manifold-referenced regulator',
  in: { setting: role(railPressure, 'p_set', 'Setting'), manifold: manifoldPressure, outside: airPressure },
  out: role(railPressure, 'p_reg', 'Pressure the regulator holds'),
  equation: 'setting + manifold - outside',
  source: ['derived', 'the diaphragm balances its spring against rail less manifold'],
} as const satisfies About

export const referencedPressure = formula<typeof about>('referenced-pressure', {}, ({ setting, manifold, outside }) => setting + manifold - outside)
