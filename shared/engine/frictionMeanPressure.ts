import { formula, type About } from '../formula/formula.ts'
import { thousandRpm } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { frictionConstant, frictionSlope, meanPressure, shaftSpeed } from './quantities.ts'

/** Friction of seals, bearings, gears and pumps as a mean pressure, a straight line over speed. */
export const about = {
  name: 'Friction mean pressure',
  in: { speed: shaftSpeed, constant: frictionConstant, slope: frictionSlope },
  out: role(meanPressure, 'p_mf', 'Friction mean pressure'),
  equation: 'constant + slope * speed / thousandRpm',
  constants: { thousandRpm },
  source: ['common-practice', 'a line over speed fitted to motored or coast-down runs'],
  notes: 'No range; a line holds over the speeds it was fitted to. Load is left out.',
} as const satisfies About

export const frictionMeanPressure = formula<typeof about>('friction-mean-pressure', {}, ({ speed, constant, slope }) => constant + (slope * speed) / thousandRpm.value)
