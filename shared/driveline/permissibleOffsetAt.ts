import { formula, type About } from '../formula/formula.ts'
import { rpm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { gradeSpeed, permissibleOffset } from './quantities.ts'

/** Offset of the mass from the axis that a balance grade allows at the highest service speed. `G / ω`, metres. */
export const about = {
  name: 'Permissible offset of mass',
  in: { grade: gradeSpeed, speed: shaftSpeed },
  out: permissibleOffset,
  equation: 'grade / speed',
  source: ['iso-21940-11', 'clause 6, permissible residual specific unbalance'],
  notes: 'For rotors that stay stiff up to their highest service speed.',
} as const satisfies About

export const permissibleOffsetAt = formula<typeof about>('permissible-offset-at', { speed: [rpm(20), rpm(200000)] }, ({ grade, speed }) => grade / speed)
