import { formula, type About } from '../formula/formula.ts'
import { NoAnswer } from '../calculation/calculation.ts'
import { root, untraced } from '../formula/trace.ts'
import { bracketedRoot } from '../numerics/root.ts'
import { arrangement, capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'
import { effectivenessOf } from './effectivenessOf.ts'

/** Transfer units that a cooler must have to reach an effectiveness: the inverse, by bracketed root. */
export const about = {
  name: 'Transfer units for an effectiveness',
  in: { arrangement, effectiveness: effectivenessValue, ratio: capacityRatioOf },
  out: transferUnitsOf,
  steps: ['Find the number of transfer units at which the arrangement’s effectiveness is the wanted one. It rises without turning, so there is one or none.'],
  source: ['kays-london', 'chapter 2, solved backwards'],
} as const satisfies About

/** Beyond this many transfer units nothing is gained that a thermometer could show. */
const most = 100

export const transferUnitsFor = formula<typeof about>('transfer-units-for', {}, ({ arrangement, effectiveness, ratio }) => {
  if (effectiveness <= 0) return 0
  const miss = (units: number): number => untraced(() => effectivenessOf({ arrangement, units, ratio })) - effectiveness
  let high = 4
  let atHigh = miss(high)
  while (atHigh < 0 && high < most) { high *= 2.5; atHigh = miss(high) }
  if (!(atHigh >= 0)) throw new NoAnswer('cooler', `No cooler of this arrangement exchanges ${effectiveness < 10 ? `${Math.round(effectiveness * 1000) / 10} % of` : 'many times'} what is possible: the rated heat, flows and temperatures do not fit each other.`)
  const found = bracketedRoot(miss, 0, high, 1e-12, -effectiveness, atHigh)
  return root('transfer units', found.x, found.residual)
})
