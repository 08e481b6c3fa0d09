import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { runningTime } from './quantities.ts'

/** The sooner of two times; one that never comes does not count. */
export const about = {
  name: 'The sooner of two times',
  in: { one: role(runningTime, 't_1', 'First time'), other: role(runningTime, 't_2', 'Second time') },
  out: runningTime,
  steps: ['The smaller of the two.', 'Where one has no value the other holds.'],
  source: ['definition', 'the smaller of two'],
} as const satisfies About

export const soonerOf = formula<typeof about>('sooner-of', {}, ({ one, other }) => (Number.isNaN(one) ? other : Number.isNaN(other) ? one : Math.min(one, other)))
