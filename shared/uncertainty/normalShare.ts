import { formula, type About } from '../formula/formula.ts'
import { chance, deviationRatio } from './quantities.ts'

/** Share of a normal distribution that lies below a point so many standard deviations above its middle. */
export const about = {
  name: 'Share of a normal distribution below a point',
  in: { z: deviationRatio },
  out: chance,
  steps: [
    'Take x = |z| / √2 and t = 1 / (1 + 0.3275911 x).',
    'The error function is 1 - t (0.254829592 + t (-0.284496736 + t (1.421413741 + t (-1.453152027 + 1.061405429 t)))) exp(-x²).',
    'Half of one plus the error function is the share for z above nothing; for z below nothing it is what is left of one.',
  ],
  source: ['abramowitz-stegun', '7.1.26: within 1.5e-7'],
} as const satisfies About

export const normalShare = formula<typeof about>('normal-share', {}, ({ z }) => {
  const x = Math.abs(z) / Math.SQRT2
  const t = 1 / (1 + 0.3275911 * x)
  const beyond = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429)))) * Math.exp(-x * x)
  return z >= 0 ? 1 - beyond / 2 : beyond / 2
})
