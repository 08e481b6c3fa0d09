import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { indexReference, viscosityAt100 } from './quantities.ts'
import { indexHigh, indexLow, indexNodes } from '../data/oilsIndex.ts'

const node = (i: number) => ({ in: { viscosity100: indexNodes[i]! * 1e-6 }, out: { low: indexLow[i]! * 1e-6, high: indexHigh[i]! * 1e-6 } })

/** Viscosities at 40 °C of the two reference oils (index 0 and 100) that have this oil's viscosity at 100 °C, up to 70 mm²/s. */
export const about = {
  name: 'Reference viscosities of the index, by table',
  in: { viscosity100: viscosityAt100 },
  out: { low: role(indexReference, 'L', 'Reference of index 0'), high: role(indexReference, 'H', 'Reference of index 100') },
  table: 'Table 1 of the standard, straight between its rows',
  nodes: [0, 30, 58, 100, 180, 220, 300, indexNodes.length - 1].map(node),
  source: ['astm-d2270', 'table 1'],
} as const satisfies About

export const indexTable = formula<typeof about>('index-table', { viscosity100: [2e-6, 70e-6] }, ({ viscosity100 }) => {
  const nu = viscosity100 * 1e6
  let i = 0, above = indexNodes.length - 1
  while (above - i > 1) {
    const middle = (i + above) >> 1
    if (indexNodes[middle]! <= nu) i = middle; else above = middle
  }
  const t = (nu - indexNodes[i]!) / (indexNodes[i + 1]! - indexNodes[i]!)
  const between = (of: readonly number[]): number => (of[i]! * (1 - t) + of[i + 1]! * t) * 1e-6
  return { low: between(indexLow), high: between(indexHigh) }
})
