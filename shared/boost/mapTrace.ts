import { readMap } from '../calculation/inputs.ts'
import { thinPlate } from '../numerics/thinPlate.ts'
import { type CompressorMap, type SpeedLine } from '../quantity/quantity.ts'
import { headOf, mapGrid } from './mapGrid.ts'
import { lowestLinePlace, mapPlace } from './mapPlace.ts'

/** A place in a picture, in its own pixels, from the top left. */
export type Pixel = readonly [x: number, y: number]
/** Two places along one axis with the values printed there. Logarithmic where equal steps multiply. */
export type Axis = { readonly at: readonly [Pixel, Pixel]; readonly value: readonly [number, number]; readonly scale: 'linear' | 'log' }
export type Axes = { readonly flow: Axis; readonly ratio: Axis }
/** What was traced from a picture of a map: lines in pixels, values in SI. */
export type Trace = {
  readonly axes: Axes
  readonly name: string
  readonly referenceTemperature: number
  readonly referencePressure: number
  /** From the lowest line up; empty where the lines begin at surge as they were traced. */
  readonly surge: readonly Pixel[]
  readonly lines: readonly { readonly speed: number; readonly points: readonly Pixel[] }[]
  readonly islands: readonly { readonly efficiency: number; readonly points: readonly Pixel[] }[]
}
export type Traced = { readonly ok: true; readonly map: CompressorMap } | { readonly ok: false; readonly says: string }
type Place = readonly [flow: number, ratio: number]

/**
 * Turns places in a picture into values and back. The axes may lie askew, as in a photographed page: a place is taken apart
 * along the directions of both. Null where they have no length, run alike, or a value cannot stand on its scale.
 */
export function scaleOf({ flow, ratio }: Axes): { readonly values: (at: Pixel) => Place; readonly pixel: (of: Place) => Pixel } | null {
  const u = minus(flow.at[1], flow.at[0])
  const v = minus(ratio.at[1], ratio.at[0])
  const det = u[0] * v[1] - u[1] * v[0]
  const x = onScale(flow)
  const y = onScale(ratio)
  if (Math.abs(det) < 1e-3 * Math.hypot(...u) * Math.hypot(...v) || !(Math.hypot(...u) > 5) || !(Math.hypot(...v) > 5) || !x || !y) return null
  // How far along each axis its own first point lies, seen from the first point of the flow axis.
  const across = (d: Pixel): readonly [number, number] => [(d[0] * v[1] - d[1] * v[0]) / det, (u[0] * d[1] - u[1] * d[0]) / det]
  const start = across(minus(ratio.at[0], flow.at[0]))[1]
  return {
    values: (at) => {
      const [s, t] = across(minus(at, flow.at[0]))
      return [x.value(s), y.value(t - start)]
    },
    pixel: ([m, r]) => {
      const s = x.share(m)
      const t = y.share(r) + start
      return [flow.at[0][0] + s * u[0] + t * v[0], flow.at[0][1] + s * u[1] + t * v[1]]
    },
  }
}

function onScale({ value: [a, b], scale }: Axis): { readonly value: (share: number) => number; readonly share: (value: number) => number } | null {
  if (!Number.isFinite(a) || !Number.isFinite(b) || a === b) return null
  if (scale === 'linear') return { value: (s) => a + s * (b - a), share: (v) => (v - a) / (b - a) }
  if (!(a > 0 && b > 0)) return null
  const whole = Math.log(b / a)
  return { value: (s) => a * Math.exp(s * whole), share: (v) => Math.log(v / a) / whole }
}

/** The map that was traced. Efficiencies are read off the smoothest surface through the traced lines of equal efficiency. */
export function tracedMap(trace: Trace): Traced {
  const scale = scaleOf(trace.axes)
  if (!scale) return no('The axes are not fixed yet: each needs two places well apart, with two different values, above zero on a logarithmic scale.')
  const lines = trace.lines.filter(({ points }) => points.length > 0)
  if (lines.length < 2) return no('Trace two speed lines or more.')
  const short = lines.find(({ points }) => points.length < 3)
  if (short) return no('A speed line has fewer than three points: one at surge, one at choke and some between.')
  const surge = trace.surge.map(scale.values)
  const places = lines.map(({ speed, points }) => ({ speed, along: risingFlow(fromSurge(points.map(scale.values), surge)) }))
  const bare: CompressorMap = {
    name: trace.name.slice(0, 120) || 'Traced map', referenceTemperature: trace.referenceTemperature, referencePressure: trace.referencePressure,
    lines: places.map(({ speed, along }): SpeedLine => ({ speed, flow: along.map(([m]) => m), ratio: along.map(([, r]) => Math.max(1, r)), efficiency: along.map(() => 0.5) })).sort((a, b) => a.speed - b.speed),
  }
  const fault = readMap(bare, 'The traced map')
  if (!fault.ok) return no(fault.says)
  // Over speed and place along the line, rather than over flow and ratio, the hill has no cliff at choke.
  const grid = mapGrid(bare)
  const spot = ([m, r]: Place): readonly [number, number] => {
    const head = headOf(Math.max(1.001, r))
    const { speed, place } = mapPlace(grid, Math.max(1e-6, m), head, lowestLinePlace(grid, Math.max(1e-6, m), head))
    return [speed / grid.top, place]
  }
  const efficiency = thinPlate(trace.islands.flatMap(({ efficiency: of, points }) => points.map((p) => [...spot(scale.values(p)), of] as const)))
  if (!efficiency) return no('Trace lines of equal efficiency: three points or more that do not lie on one straight line, none of them twice.')
  const kept = (e: number): number => Math.min(0.95, Math.max(0.15, e))
  return { ok: true, map: { ...bare, lines: bare.lines.map((line) => ({ ...line, efficiency: line.flow.map((m, j) => kept(efficiency(...spot([m, line.ratio[j]!])))) })) } }
}

/** A speed line made to begin on the surge line: cut where it crosses it, or led on to it where it ends just short. */
function fromSurge(line: readonly Place[], surge: readonly Place[]): readonly Place[] {
  const along = line[0]![0] <= line.at(-1)![0] ? line : [...line].reverse()
  const whole = along.at(-1)![0] - along[0]![0]
  const reach = 0.1 * whole
  // The first piece may be led on to the left by a tenth of the line.
  const [a, b] = along as [Place, Place]
  const slope = (b[1] - a[1]) / (b[0] - a[0] || 1)
  const led: readonly Place[] = [[a[0] - reach, a[1] - slope * reach], ...along]
  for (let i = 1; i < surge.length; i++) for (let j = 1; j < led.length; j++) {
    const at = crossing(surge[i - 1]!, surge[i]!, led[j - 1]!, led[j]!)
    if (at) return [at, ...led.slice(j).filter(([m]) => m > at[0] + 1e-3 * whole)]
  }
  return along
}

function crossing(a: Place, b: Place, c: Place, d: Place): Place | null {
  const r = minus(b, a), s = minus(d, c), q = minus(c, a)
  const det = r[0] * s[1] - r[1] * s[0]
  if (det === 0) return null
  const t = (q[0] * s[1] - q[1] * s[0]) / det
  const u = (q[0] * r[1] - q[1] * r[0]) / det
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? [a[0] + t * r[0], a[1] + t * r[1]] : null
}

/** Where a line falls straight down a hand trembles to the left: such a point is set just beside the one before it. */
function risingFlow(line: readonly Place[]): readonly Place[] {
  const least = 1e-4 * (line.at(-1)![0] - line[0]![0] || 1)
  const kept: Place[] = []
  for (const [m, r] of line) {
    const last = kept.at(-1)
    kept.push([last && m <= last[0] ? last[0] + Math.abs(least) : m, last ? Math.min(r, last[1] + 0.05) : r])
  }
  return kept
}

const minus = (a: readonly [number, number], b: readonly [number, number]): readonly [number, number] => [a[0] - b[0], a[1] - b[1]]
const no = (says: string): Traced => ({ ok: false, says })
