import { formula, type About } from '../formula/formula.ts'
import { frictionFactor, pipeReynolds, relativeRoughness } from './quantities.ts'

/** Darcy friction factor of turbulent flow by the implicit equation that charts of pipe friction are drawn from. */
export const about = {
  name: 'Friction factor by Colebrook',
  in: { reynolds: pipeReynolds, relativeRoughness },
  out: frictionFactor,
  holds: '1 / sqrt(out) = -2 * log10(relativeRoughness / 3.7 + 2.51 / (reynolds * sqrt(out)))',
  source: ['colebrook-1939', 'the equation for transition between smooth and rough'],
  notes: 'Turbulent flow only.',
  sample: { reynolds: [4000, 1e8] },
} as const satisfies About

export const colebrookFriction = formula<typeof about>('colebrook-friction', { reynolds: [4000, 1e8], relativeRoughness: [0, 0.05] }, ({ reynolds, relativeRoughness: rough }) => {
  // Newton on x = 1/√f: the equation is nearly straight in x, so a few steps reach the last digit.
  let x = 6
  for (let i = 0; i < 20; i++) {
    const inner = rough / 3.7 + (2.51 * x) / reynolds
    const miss = x + 2 * Math.log10(inner)
    const step = miss / (1 + (2 * 2.51) / (reynolds * inner * Math.LN10))
    x -= step
    if (Math.abs(step) < 1e-14 * x) break
  }
  return 1 / x ** 2
})
