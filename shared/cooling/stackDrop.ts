import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coreDropOf, coverageOf } from './quantities.ts'


/** Pressure that the whole stack loses at the radiator’s rated air flow: the radiator, and the charge cooler over the share of it that stands in front. */
export const about = {
  name: 'Pressure lost in the stack',
  in: { radiator: role(coreDropOf, 'Δp_k0', 'Pressure lost in the radiator'), front: role(coreDropOf, 'Δp_f', 'Pressure lost in the charge cooler'), coverage: coverageOf },
  out: coreDropOf,
  equation: 'radiator + coverage * front',
  source: ['derived', 'losses in series add; the covered share taken as a mean over the face'],
} as const satisfies About

export const stackDrop = formula<typeof about>('stack-drop', {}, ({ radiator, front, coverage }) => radiator + coverage * front)
