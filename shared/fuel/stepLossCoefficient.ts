import { formula, type About } from '../formula/formula.ts'
import { areaRatio, fittingLoss } from './quantities.ts'

/** Loss coefficient of a sudden widening, on the speed in the smaller bore. */
export const about = {
  name: 'Loss coefficient of a sudden widening',
  in: { diameters: areaRatio },
  out: fittingLoss,
  equation: '(1 - diameters^2)^2',
  source: ['white-fluid', 'section 6.9, from momentum'],
  notes: 'An exit into a tank is the limit of a vanishing small bore: 1.',
} as const satisfies About

export const stepLossCoefficient = formula<typeof about>('step-loss-coefficient', {}, ({ diameters }) => (1 - diameters ** 2) ** 2)
