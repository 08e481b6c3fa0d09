import { formula, type About } from '../formula/formula.ts'
import { degC } from '../quantity/si.ts'
import { boilingHeatOf, boilingPointOf } from './quantities.ts'

/** Heat that turns boiling water into vapour. Of a mixture almost only the water boils away. */
export const about = {
  name: 'Heat of boiling',
  in: { temperature: boilingPointOf },
  out: boilingHeatOf,
  table: 'Saturated water from 60 to 150 °C in steps of 10 K, straight lines between',
  nodes: [{ in: { temperature: degC(60) }, out: 2357691 }, { in: { temperature: degC(100) }, out: 2256473 }, { in: { temperature: degC(120) }, out: 2202150 }, { in: { temperature: degC(150) }, out: 2113668 }],
  source: ['iapws-if97', 'saturated liquid and vapour'],
  notes: 'Glycol stays behind nearly whole: what boils is taken as water. Between nodes within 0.02 %.',
} as const satisfies About

const least = degC(60)
const heats = [2357691, 2333081, 2308066, 2282560, 2256473, 2229704, 2202150, 2173700, 2144244, 2113668]

export const boilingHeat = formula<typeof about>('boiling-heat', { temperature: [degC(60), degC(150)] }, ({ temperature }) => {
  const x = (temperature - least) / 10
  const i = Math.min(Math.max(Math.floor(x), 0), heats.length - 2)
  return heats[i]! + (x - i) * (heats[i + 1]! - heats[i]!)
})
