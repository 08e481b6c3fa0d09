import { headExponent, mapGrid } from '@trochoid/compute/boost/mapGrid.ts'
import { gridAt, type Grid } from '@trochoid/compute/numerics/grid.ts'
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

/** Lines of equal efficiency, sought over speed and place along the line, where the map has no edges to stop short of. */
function islands(map: CompressorMap, levels: readonly number[]) {
  const g = mapGrid(map)
  const out = new Float64Array(3)
  const read = (of: Grid, speed: number, place: number): number => { gridAt(of, speed, place, out); return out[0]! }
  const places = Array.from({ length: 25 }, (_, i) => i / 24), speeds = Array.from({ length: 25 }, (_, i) => g.lowest + ((g.top - g.lowest) * i) / 24)
  const z = speeds.map((speed) => places.map((place) => read(g.efficiency, speed, place)))
  const spot = ([place, speed]: Spot): Spot => [read(g.flow, speed, place), (1 + read(g.head, speed, place)) ** (1 / headExponent)]
  return levels.flatMap((level) => contour(places, speeds, z, level).filter((spots) => spots.length > 3).map((spots) => ({ level, spots: spots.map(spot) })))
}

export function drawn(map: CompressorMap, levels: readonly number[] = []): Drawn {
  const { lines } = map
  return { speeds: lines.map(({ speed }) => speed), lines: lines.map(smooth), surge: lines.map(({ flow, ratio }): Spot => [flow[0]!, ratio[0]!]), right: lines.map(({ flow, ratio }): Spot => [flow.at(-1)!, ratio.at(-1)!]), islands: islands(map, levels) }
}
