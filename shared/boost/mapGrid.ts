import { airHeatRatio } from '../formula/constants.ts'
import { gridOf, type Grid } from '../numerics/grid.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'
import { type CompressorMap, type SpeedLine } from '../quantity/quantity.ts'
import { edgesOf, type Edge } from './mapEdges.ts'

/**
 * A compressor map made ready for reading. Rows are speed lines, columns places along them from surge (0) to choke (1); on such
 * a grid, curves that rise over speed and along the line can neither cross nor fold. Pressure ratio is held as the isentropic
 * temperature rise over inlet temperature, because that goes with the square of speed.
 */
export type MapGrid = {
  readonly flow: Grid
  readonly head: Grid
  readonly efficiency: Grid
  readonly lowest: number
  readonly top: number
  /** Sizes by which leftovers of flow and head are weighed. */
  readonly flowScale: number
  readonly headScale: number
  /** Efficiency below which an extrapolated one bends off, so that it never reaches zero. */
  readonly lowEfficiency: number
  readonly surge: Edge
  readonly right: Edge
}
export const columns = 33
export const headExponent = (airHeatRatio.value - 1) / airHeatRatio.value
export const headOf = (ratio: number): number => ratio ** headExponent - 1

const ready = new WeakMap<CompressorMap, MapGrid>()

/** The grid of a map, made once. */
export function mapGrid(map: CompressorMap): MapGrid {
  const kept = ready.get(map)
  if (kept) return kept
  const made = prepare(map)
  ready.set(map, made)
  return made
}

function prepare(map: CompressorMap): MapGrid {
  const { lines } = map
  const speeds = Float64Array.from(lines, (line) => line.speed)
  const size = lines.length * columns
  const make = () => ({ value: new Float64Array(size), slope: new Float64Array(size) })
  const flow = make(), head = make(), efficiency = make()
  lines.forEach((line, i) => {
    const heads = line.ratio.map(headOf)
    const places = placesAlong(line.flow, heads)
    for (const [values, into] of [[line.flow, flow], [heads, head], [line.efficiency, efficiency]] as const) {
      const slopes = monotoneSlopes(places, values)
      if (into === flow) steepen(slopes, places, values, 1)
      if (into === head) steepen(slopes, places, values, -1)
      resample(places, values, slopes, into, i * columns)
    }
  })
  // Below the lowest line flow goes with speed and head with its square: the grid starts with those slopes, so the two join smoothly.
  const first = speeds[0]!
  const flowGrid = gridOf(speeds, columns, flow.value, flow.slope, flow.value.subarray(0, columns).map((m) => m / first))
  const headGrid = gridOf(speeds, columns, head.value, head.slope, head.value.subarray(0, columns).map((h) => (2 * h) / first))
  const least = Math.min(...lines.flatMap((line) => line.efficiency))
  const grids = {
    flow: flowGrid, head: headGrid,
    efficiency: gridOf(speeds, columns, efficiency.value, efficiency.slope, new Float64Array(columns)),
    lowest: first, top: speeds[speeds.length - 1]!,
    flowScale: Math.max(...flow.value), headScale: Math.max(...head.value), lowEfficiency: Math.min(0.2, least),
  }
  return { ...grids, ...edgesOf(grids) }
}

/** Places 0..1 along a line by the length walked in a picture of it, so that both its flat and its steep part get their share. */
function placesAlong(flow: SpeedLine['flow'], head: readonly number[]): Float64Array {
  const wide = flow[flow.length - 1]! - flow[0]!
  const high = Math.max(...head) - Math.min(...head) || 1
  const at = new Float64Array(flow.length)
  for (let j = 1; j < flow.length; j++) at[j] = at[j - 1]! + Math.hypot((flow[j]! - flow[j - 1]!) / wide, (head[j]! - head[j - 1]!) / high)
  const whole = at[at.length - 1]!
  return at.map((s) => s / whole)
}

/** Beyond its ends a line goes straight on with its end slope; one that lies flat there would never leave the map. */
function steepen(slopes: Float64Array, x: Float64Array, y: ArrayLike<number>, sign: 1 | -1): void {
  const n = x.length - 1
  const least = 0.2 * Math.abs(y[n]! - y[0]!)
  const end = sign > 0 ? [0, n] : [n]
  for (const i of end) {
    const j = i === 0 ? 0 : n - 1
    const secant = Math.abs((y[j + 1]! - y[j]!) / (x[j + 1]! - x[j]!))
    if (sign * slopes[i]! < least) slopes[i] = sign * Math.min(least, 3 * secant || least)
  }
}

function resample(places: Float64Array, values: ArrayLike<number>, slopes: Float64Array, into: { value: Float64Array; slope: Float64Array }, offset: number): void {
  const fine = new Float64Array(columns)
  for (let k = 0; k < columns; k++) fine[k] = hermiteAt(places, values, slopes, k / (columns - 1))
  const d = monotoneSlopes(Float64Array.from(fine, (_, k) => k / (columns - 1)), fine)
  d[0] = slopes[0]!
  d[columns - 1] = slopes[slopes.length - 1]!
  into.value.set(fine, offset)
  into.slope.set(d, offset)
}
