import { formula, type About } from '../formula/formula.ts'
import { bearingLength, leakageFactor, oilHole, radialClearance } from './quantities.ts'

/** Leakage of a bearing fed through one round hole: flow times viscosity over pressure. */
export const about = {
  name: 'Leakage factor of a bearing fed by a hole',
  in: { clearance: radialClearance, hole: oilHole, length: bearingLength },
  out: leakageFactor,
  equation: '0.675 * clearance^3 * (hole / length + 0.4)^1.75',
  source: ['martin-engine-bearings', 'Q = 0.675 (h³ p / η) (d_h/l + 0.4)^1.75, h the film at the hole (from memory)'],
  notes: 'Film at the hole taken as the radial clearance.',
} as const satisfies About

export const holeLeakage = formula<typeof about>('hole-leakage', {}, ({ clearance, hole, length }) => 0.675 * clearance ** 3 * (hole / length + 0.4) ** 1.75)
