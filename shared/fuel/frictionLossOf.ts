import { formula, type About } from '../formula/formula.ts'
import { fuelDensity, frictionFactor, lineBore, lineLength, linePressureLoss, lineSpeed } from './quantities.ts'

/** Pressure lost to friction along a straight line. */
export const about = {
  name: 'Pressure lost to friction',
  in: { friction: frictionFactor, length: lineLength, bore: lineBore, density: fuelDensity, speed: lineSpeed },
  out: linePressureLoss,
  equation: 'friction * length / bore * density * speed^2 / 2',
  source: ['white-fluid', 'section 6.3, equation of Darcy and Weisbach'],
  notes: 'Source states no range. The first stretch after an entry, where the flow is still forming, loses more.',
} as const satisfies About

export const frictionLossOf = formula<typeof about>('friction-loss-of', {}, ({ friction, length, bore, density, speed }) => (((friction * length) / bore) * density * speed ** 2) / 2)
