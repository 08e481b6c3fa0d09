import { type Check } from '../check.ts'

/** Darcy friction factors computed by a general-purpose library: Reynolds number, roughness over bore, Colebrook, Haaland, Swamee and Jain. */
const rows: readonly (readonly [number, number, number, number, number])[] = [
  [4000, 0, 0.039907, 0.040423, 0.040551],
  [4000, 0.001, 0.04091, 0.041216, 0.041695],
  [100000, 0, 0.01799, 0.017825, 0.017863],
  [100000, 0.0001, 0.018514, 0.018265, 0.018452],
  [100000, 0.001, 0.022175, 0.021966, 0.022342],
  [1e+06, 0.0001, 0.013441, 0.013326, 0.013508],
  [1e+07, 0.0001, 0.012166, 0.012166, 0.012214],
]
const formulas = ['colebrook-friction', 'haaland-friction', 'swamee-jain-friction'] as const
const source = 'Darcy friction factor, Debian python3-fluids 1.0.22'

export const checks: readonly Check[] = rows.flatMap(([reynolds, relativeRoughness, ...values]) => formulas.map((of, i) => ({
  id: `${of}-${reynolds}-${relativeRoughness}`, of,
  in: { reynolds, relativeRoughness },
  out: { out: { value: values[i]!, unit: '1', tolerance: 2e-6 } },
  source, confidence: 'computed by a reference library',
})))
