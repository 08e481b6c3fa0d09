import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { crankingSpeed, facePressure } from './quantities.ts'

/** A reading of one face carried to another cranking speed: what leaks goes with the time there is for it. */
export const about = {
  name: 'Reading carried to another cranking speed',
  in: { reading: role(facePressure, 'p_k', 'As read'), ideal: role(facePressure, 'p_i', 'Reading without leakage'), speed: role(crankingSpeed, 'n_k', 'As cranked'), wanted: role(crankingSpeed, 'n_w', 'Cranking speed to compare at') },
  out: role(facePressure, 'p_w', 'At the speed to compare at'),
  equation: 'ideal - (ideal - reading) * speed / wanted',
  source: ['derived', 'loss in proportion to leakage area and to time, so to one over speed; a straight line about the speed read at'],
  notes: 'Linear: honest within some 30 % of the speed read at. Charts of engine makers differ; theirs come first.',
} as const satisfies About

export const faceAtSpeed = formula<typeof about>('face-at-speed', {}, ({ reading, ideal, speed, wanted }) => ideal - ((ideal - reading) * speed) / wanted)
