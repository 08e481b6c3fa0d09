import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { viscosityScale } from './quantities.ts'

/** The larger of two demands on an oil. */
export const about = {
  name: 'The larger demand',
  in: { one: role(viscosityScale, 'k_1', 'First demand'), other: role(viscosityScale, 'k_2', 'Second demand') },
  out: viscosityScale,
  equation: 'max(one, other)',
  source: ['definition', 'the larger of two'],
} as const satisfies About

export const thickerOf = formula<typeof about>('thicker-of', {}, ({ one, other }) => Math.max(one, other))
