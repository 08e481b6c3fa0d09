import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { hermiteAt, monotoneSlopes } from '@trochoid/compute/numerics/monotone.ts'
import type { CompressorMap, SpeedLine } from '@trochoid/compute/quantity/quantity.ts'
import type { Spot } from './Lines.tsx'
import { contour } from './contour.ts'

/** A compressor map made ready for drawing, in SI: its speed lines, both edges and lines of equal efficiency. */
export type Drawn = { readonly speeds: readonly number[]; readonly lines: readonly (readonly Spot[])[]; readonly surge: readonly Spot[]; readonly right: readonly Spot[]; readonly islands: readonly { readonly level: number; readonly spots: readonly Spot[] }[] }

const along = 20
/** One speed line, smooth between its points as the reading of the map takes it to be. */
function smooth({ flow, ratio }: SpeedLine): Spot[] {
  const slopes = monotoneSlopes(flow, ratio)
  const from = flow[0]!, to = flow.at(-1)!
  return Array.from({ length: along + 1 }, (_, i): Spot => {
    // Closer together where the line falls away.
    const at = from + (to - from) * (1 - (1 - i / along) ** 1.6)
    return [at, hermiteAt(flow, ratio, slopes, at)]
  })
}

/** Efficiency over flow and ratio, nothing where the map says nothing. */
function islands(map: CompressorMap, levels: readonly number[]) {
  const most = Math.max(...map.lines.map(({ flow }) => flow.at(-1)!)), high = Math.max(...map.lines.map(({ ratio }) => Math.max(...ratio)))
  const x = Array.from({ length: 40 }, (_, i) => most * (0.02 + (0.98 * i) / 39)), y = Array.from({ length: 34 }, (_, i) => 1.02 + ((high - 1.02) * i) / 33)
  const z = y.map((ratio) => x.map((flow) => {
    const at = compressorAt({ map, flow, ratio })
    return at.outside === 0 && at.estimated === 0 ? at.efficiency : null
  }))
  return levels.flatMap((level) => contour(x, y, z, level).filter((spots) => spots.length > 3).map((spots) => ({ level, spots })))
}

export function drawn(map: CompressorMap, levels: readonly number[] = []): Drawn {
  const { lines } = map
  return { speeds: lines.map(({ speed }) => speed), lines: lines.map(smooth), surge: lines.map(({ flow, ratio }): Spot => [flow[0]!, ratio[0]!]), right: lines.map(({ flow, ratio }): Spot => [flow.at(-1)!, ratio.at(-1)!]), islands: islands(map, levels) }
}
