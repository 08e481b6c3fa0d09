import { type CompressorMap } from '../../quantity/quantity.ts'
import { rpm } from '../../quantity/si.ts'

/** What makes one invented map: its top speed line and its best efficiency. */
export type Invention = {
  readonly name: string
  readonly topSpeed: number
  readonly topRatio: number
  readonly surgeFlow: number
  readonly chokeFlow: number
  readonly bestEfficiency: number
}
const shares = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]
const places = [0, 0.2, 0.4, 0.58, 0.74, 0.86, 0.94, 1]
const rounded = (x: number, digits: number): number => Number(x.toFixed(digits))

/**
 * An invented compressor map in a generic smooth form: work goes with the square of speed, each line falls from a flat top to
 * choke, and efficiency is a hill. It belongs to no machine that anyone makes.
 */
export function inventedMap(of: Invention): CompressorMap {
  const topHead = of.topRatio ** (0.4 / 1.4) - 1
  return {
    name: of.name, referenceTemperature: 298.15, referencePressure: 1e5, estimate: true,
    lines: shares.map((share) => {
      const surge = of.surgeFlow * share ** 2
      const choke = of.chokeFlow * share ** 0.85
      const flow = places.map((s) => rounded(surge + (choke - surge) * s, 4))
      return {
        speed: rpm(of.topSpeed * share),
        flow,
        ratio: places.map((s) => rounded((1 + topHead * share ** 2 * (1 - 0.06 * s - 0.59 * s ** 4.5)) ** 3.5, 3)),
        efficiency: places.map((s) => rounded(of.bestEfficiency - 0.3 * (s - 0.48) ** 2 - 0.62 * Math.max(0, s - 0.7) ** 1.6 - 0.32 * (share - 0.7) ** 2, 3)),
      }
    }),
  }
}
