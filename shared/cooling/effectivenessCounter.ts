import { formula, type About } from '../formula/formula.ts'
import { capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'


/** Streams run against each other: the best a cooler can be arranged. */
export const about = {
  name: 'Effectiveness in counter flow',
  in: { units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  equation: '(1 - exp(-units * (1 - ratio))) / (1 - ratio * exp(-units * (1 - ratio)))',
  source: ['kays-london', 'chapter 2; Incropera table 11.3'],
  notes: 'At equal capacity rates it is NTU / (1 + NTU), its limit.',
  sample: { ratio: [0, 0.97] },
} as const satisfies About

export const effectivenessCounter = formula<typeof about>('effectiveness-counter', {}, ({ units, ratio }) => {
  if (ratio === 1) return units / (1 + units)
  // Written with e^x - 1, because near equal streams both ends of the fraction vanish.
  const risen = -Math.expm1(-units * (1 - ratio))
  return risen / (1 - ratio + ratio * risen)
})
