import { formula, type About } from '../formula/formula.ts'
import { manifoldPressure } from '../engine/quantities.ts'
import { handoverPressure, handoverWidth, stageShare } from './quantities.ts'

/** How far the stages have come from hand-over to their full shares: 0 at the start, 1 after the width, straight between. */
export const about = {
  name: 'Progress of the hand-over',
  in: { manifold: manifoldPressure, start: handoverPressure, width: handoverWidth },
  out: stageShare,
  equation: 'min(max((manifold - start) / width, 0), 1)',
  source: ['common-practice', 'a straight blend over manifold pressure'],
} as const satisfies About

export const blendWeight = formula<typeof about>('blend-weight', {}, ({ manifold, start, width }) => Math.min(Math.max((manifold - start) / width, 0), 1))
