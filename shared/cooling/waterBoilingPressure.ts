import { formula, type About } from '../formula/formula.ts'
import { waterPressure, waterTemperature } from './quantities.ts'

/** The ten coefficients of region 4. */
export const n = [1167.0521452767, -724213.16703206, -17.073846940092, 12020.82470247, -3232555.0322333, 14.91510861353, -4823.2657361591, 405113.40542057, -0.23855557567849, 650.17534844798] as const

/** Pressure at which pure water boils at a given temperature. */
export const about = {
  name: 'Pressure at which water boils',
  in: { temperature: waterTemperature },
  out: waterPressure,
  steps: [
    'Take ϑ = T + n9 / (T − n10), T in K.',
    'A = ϑ² + n1 ϑ + n2, B = n3 ϑ² + n4 ϑ + n5, C = n6 ϑ² + n7 ϑ + n8.',
    'p = (2 C / (−B + √(B² − 4 A C)))⁴, in MPa. n1 to n10: 1167.0521452767, −724213.16703206, −17.073846940092, 12020.82470247, −3232555.0322333, 14.91510861353, −4823.2657361591, 405113.40542057, −0.23855557567849, 650.17534844798.',
  ],
  source: ['iapws-if97', 'equation 30, region 4'],
} as const satisfies About

export const waterBoilingPressure = formula<typeof about>('water-boiling-pressure', { temperature: [273.15, 647.096] }, ({ temperature }) => {
  const t = temperature + n[8] / (temperature - n[9])
  const a = t * t + n[0] * t + n[1]
  const b = n[2] * t * t + n[3] * t + n[4]
  const c = n[5] * t * t + n[6] * t + n[7]
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4
})
