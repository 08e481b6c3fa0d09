import { formula, type About } from '../formula/formula.ts'
import { capacityRatioOf, effectivenessValue, transferUnitsOf } from './quantities.ts'

/** Cross flow with both streams kept apart in channels, as in a finned radiator: exact, not the common approximation. */
export const about = {
  name: 'Effectiveness in cross flow, both streams unmixed',
  in: { units: transferUnitsOf, ratio: capacityRatioOf },
  out: effectivenessValue,
  steps: [
    'Let N = NTU on the weaker side and M = C_r N on the stronger.',
    'a_n = 1 − e^(−N) (1 + N + N²/2! + … + Nⁿ/n!), and b_n the same with M.',
    'ε = (a_0 b_0 + a_1 b_1 + a_2 b_2 + …) / M, added until a term no longer counts.',
    'Where the stronger stream does not change temperature, ε = 1 − e^(−N).',
  ],
  source: ['mason-1955', 'series for both fluids unmixed'],
  notes: 'The usual closed approximation differs from it by up to 1.6 %.',
} as const satisfies About

export const effectivenessCrossUnmixed = formula<typeof about>('effectiveness-cross-unmixed', {}, ({ units, ratio }) => {
  const other = units * ratio
  if (other < 1e-7) return -Math.expm1(-units)
  let termA = Math.exp(-units), termB = Math.exp(-other)
  let a = -Math.expm1(-units), b = -Math.expm1(-other)
  let sum = a * b
  for (let n = 1; n < 500; n++) {
    termA *= units / n
    termB *= other / n
    a -= termA
    b -= termB
    const more = a * b
    if (!(more > 1e-17 * sum)) break
    sum += more
  }
  return sum / other
})
