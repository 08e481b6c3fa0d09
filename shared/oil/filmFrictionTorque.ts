import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bearingLoad, bearingSpeed, frictionTorque, frictionVariable, radialClearance } from './quantities.ts'

/** Friction torque of a loaded bearing, with a film made by one speed and sheared by another. */
export const about = {
  name: 'Friction torque of a loaded bearing',
  in: { variable: frictionVariable, clearance: radialClearance, load: bearingLoad, filmSpeed: role(bearingSpeed, 'n_f', 'Speed that makes the film'), slidingSpeed: role(bearingSpeed, 'n_s', 'Sliding speed') },
  out: frictionTorque,
  equation: 'variable * clearance * load * slidingSpeed / filmSpeed',
  sample: { filmSpeed: [10, 1500] },
  source: ['raimondi-boyd', 'friction variable; scaled by sliding over film speed where the two differ'],
  notes: 'The scaling is exact for the shearing part, which is nearly all of it.',
} as const satisfies About

export const filmFrictionTorque = formula<typeof about>('film-friction-torque', {}, ({ variable, clearance, load, filmSpeed, slidingSpeed }) =>
  (variable * clearance * load * slidingSpeed) / filmSpeed)
