import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { airPressure, crankingSpeed, facePressure } from './quantities.ts'

/** A reading of one face carried to another cranking speed: of what is in the chamber, each moment loses the same share. */
export const about = {
  name: 'Reading carried to another cranking speed',
  in: { reading: role(facePressure, 'p_k', 'As read'), ideal: role(facePressure, 'p_i', 'Reading without leakage'), speed: role(crankingSpeed, 'n_k', 'As cranked'), wanted: role(crankingSpeed, 'n_w', 'Cranking speed to compare at'), outside: airPressure },
  out: role(facePressure, 'p_w', 'At the speed to compare at'),
  equation: '(ideal + outside) * ((reading + outside) / (ideal + outside))^(speed / wanted) - outside',
  source: ['derived', 'a choked leak passes flow in proportion to pressure, so at each angle the same share of the charge is lost for each moment spent there; the share that stays is a power of one over speed'],
  notes: 'A leak is choked only above about twice the pressure behind it, and heat lost to cold walls goes the same way: honest within some 30 % of the speed read at. Charts of engine makers differ; theirs come first.',
} as const satisfies About

export const faceAtSpeed = formula<typeof about>('face-at-speed', {}, ({ reading, ideal, speed, wanted, outside }) => (ideal + outside) * ((reading + outside) / (ideal + outside)) ** (speed / wanted) - outside)
