import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { bearingSpeed, filmThickness, journalDiameter, shearRate } from './quantities.ts'

/** Shear rate in the thinnest place of a bearing film. */
export const about = {
  name: 'Shear rate of a film',
  in: { diameter: journalDiameter, speed: role(bearingSpeed, 'n_s', 'Sliding speed'), film: filmThickness },
  out: shearRate,
  equation: 'diameter / 2 * speed / film',
  sample: { speed: [1, 1200] },
  source: ['definition', 'surface speed over film thickness'],
} as const satisfies About

export const filmShearRate = formula<typeof about>('film-shear-rate', {}, ({ diameter, speed, film }) => ((diameter / 2) * speed) / film)
