import { formula, type About } from '../formula/formula.ts'
import { waterPressure, waterTemperature } from './quantities.ts'
import { n } from './waterBoilingPressure.ts'

/** Temperature at which pure water boils at a given pressure: the exact inverse of the other equation. */
export const about = {
  name: 'Temperature at which water boils',
  in: { pressure: waterPressure },
  out: waterTemperature,
  steps: [
    'Take β = p^¼, p in MPa.',
    'E = β² + n3 β + n6, F = n1 β² + n4 β + n7, G = n2 β² + n5 β + n8, with the coefficients of the pressure equation.',
    'D = 2 G / (−F − √(F² − 4 E G)); T = (n10 + D − √((n10 + D)² − 4 (n9 + n10 D))) / 2, in K.',
  ],
  source: ['iapws-if97', 'equation 31, region 4'],
} as const satisfies About

export const waterBoilingTemperature = formula<typeof about>('water-boiling-temperature', { pressure: [611.213, 22.064e6] }, ({ pressure }) => {
  const root = Math.sqrt(pressure * 1e-6)
  const beta = Math.sqrt(root)
  const e = root + n[2] * beta + n[5]
  const f = n[0] * root + n[3] * beta + n[6]
  const g = n[1] * root + n[4] * beta + n[7]
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g))
  return (n[9] + d - Math.sqrt((n[9] + d) ** 2 - 4 * (n[8] + n[9] * d))) / 2
})
