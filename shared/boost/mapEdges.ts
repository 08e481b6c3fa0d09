import { gridAt, type Grid } from '../numerics/grid.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'

/** Flow along one edge of a map over head: surge on the left; choke, and above it the top speed line, on the right. */
export type Edge = { readonly head: Float64Array; readonly flow: Float64Array; readonly slope: Float64Array }
type Grids = { readonly flow: Grid; readonly head: Grid; readonly lowest: number; readonly top: number }

const perLine = 8

export function edgesOf(g: Grids): { readonly surge: Edge; readonly right: Edge } {
  const left: [number, number][] = []
  const choke: [number, number][] = []
  const topLine: [number, number][] = []
  for (let i = 0; i < g.flow.rows.length; i++) {
    const speed = g.flow.rows[i]!
    const next = g.flow.rows[i + 1] ?? speed * 1.2
    for (let j = 0; j < perLine; j++) {
      const n = speed + ((next - speed) * j) / perLine
      left.push(pointAt(g, n, 0))
      if (n <= g.top) choke.push(pointAt(g, n, 1))
    }
  }
  for (let j = 1; j <= 64; j++) topLine.push(pointAt(g, g.top, 1 - j / 64))
  const right = edge([...choke, ...topLine])
  // Above the map's highest point nothing tells how the right edge goes on: its flow is kept.
  right.slope[right.slope.length - 1] = 0
  return { surge: edge(left), right }
}

/** Flow of the edge at a head. Below the lowest line, head goes with the square of flow. */
export function edgeFlow(e: Edge, head: number): number {
  if (head <= 0) return 0
  const low = e.head[0]!
  return head < low ? e.flow[0]! * Math.sqrt(head / low) : hermiteAt(e.head, e.flow, e.slope, head)
}

const out = new Float64Array(3)
function pointAt(g: Grids, speed: number, place: number): [head: number, flow: number] {
  gridAt(g.head, speed, place, out)
  const head = out[0]!
  gridAt(g.flow, speed, place, out)
  return [head, out[0]!]
}

/** Keeps the points at which head rises: a line that dips towards surge has its highest point before its end. */
function edge(points: readonly (readonly [number, number])[]): Edge {
  const kept: (readonly [number, number])[] = []
  for (const p of points) if (kept.length === 0 || p[0] > kept[kept.length - 1]![0]) kept.push(p)
  const head = Float64Array.from(kept, (p) => p[0])
  const flow = Float64Array.from(kept, (p) => p[1])
  return { head, flow, slope: monotoneSlopes(head, flow) }
}
