import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { eccentricity, generatingRadius, parallelShift, sealSpeed, shaftSpeed } from './quantities.ts'

/** Highest and lowest sliding speed over one round of the housing. */
export const about = {
  name: 'Highest and lowest sliding speed of the apex seal',
  in: { generatingRadius, eccentricity, shift: parallelShift, speed: shaftSpeed },
  out: { highest: role(sealSpeed, 'v_max', 'Highest sliding speed'), lowest: role(sealSpeed, 'v_min', 'Lowest sliding speed') },
  equation: { highest: 'speed / 3 * (generatingRadius + 3 * eccentricity + shift)', lowest: 'speed / 3 * (generatingRadius - 3 * eccentricity + shift)' },
  source: ['yamamoto-1981', 'sliding velocity of the apex seal at the long and the short axis'],
  notes: 'Source states no range.',
} as const satisfies About

export const apexSealSpeedRange = formula<typeof about>('apex-seal-speed-range', {}, ({ generatingRadius: R, eccentricity: e, shift, speed }) => ({
  highest: (speed / 3) * (R + 3 * e + shift), lowest: (speed / 3) * (R - 3 * e + shift),
}))
