import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { percent, rpm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import { clampLoss, clampShare } from './quantities.ts'

/**
 * What is left of a clutch's clamp load after facing wear and at speed. The fingers of a diaphragm spring are thrown outward with the
 * square of speed, so the loss stated at one speed scales: `(1 − x_w) (1 − x_n (n / n_0)²)`, never below zero.
 */
export const about = {
  name: 'Clamp left after wear and at speed',
  in: {
    worn: role(clampLoss, 'x_w', 'Clamp lost to wear'), thrown: role(clampLoss, 'x_n', 'Clamp lost to speed'),
    speed: shaftSpeed, lossSpeed: role(shaftSpeed, 'n_0', 'Speed of that loss'),
  },
  out: clampShare,
  equation: '(1 - worn) * max(0, 1 - thrown * (speed / lossSpeed)^2)',
  source: ['derived', 'centrifugal force on the spring fingers grows with the square of speed; wear taken as independent'],
  notes: 'The sizes of both losses are the maker’s to state or the builder’s to measure.',
  sample: { lossSpeed: [rpm(4000), rpm(11000)], thrown: [0, percent(40)] },
} as const satisfies About

export const clampShareLeft = formula<typeof about>('clamp-share-left', {},
  ({ worn, thrown, speed, lossSpeed }) => (1 - worn) * Math.max(0, 1 - thrown * (speed / lossSpeed) ** 2))
