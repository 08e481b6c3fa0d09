import { gridAt } from '../numerics/grid.ts'
import { type MapGrid } from './mapGrid.ts'

/** Where a point lies on a map: corrected speed and place along the line, 0 at surge and 1 at choke. */
export type Place = { readonly speed: number; readonly place: number }

const line = new Float64Array(3)
const flowOut = new Float64Array(3)
const headOut = new Float64Array(3)

/**
 * Place and speed by similarity with the lowest line: flow as speed, head as speed squared. The place is the root of
 * flow² h(place) - head m(place)², which lies between where the line would come to no flow and where it would come to no head.
 */
export function lowestLinePlace(g: MapGrid, flow: number, head: number): Place {
  const n = g.lowest
  gridAt(g.flow, n, 0, line)
  let low = -line[0]! / line[2]!
  gridAt(g.head, n, 1, line)
  let high = 1 - line[0]! / line[2]!
  const square = flow * flow
  let at = Math.min(0.5, high)
  const w = (g.flowScale * g.flowScale) / g.headScale
  let speed = n
  for (let i = 0; i < 60; i++) {
    gridAt(g.flow, n, at, line)
    const m = line[0]!
    const mSlope = line[2]!
    gridAt(g.head, n, at, line)
    const h = line[0]!
    const f = square * h - head * m * m
    if (f > 0) low = at
    else high = at
    const slope = square * line[2]! - 2 * head * m * mSlope
    let next = at - f / slope
    if (!(next > low && next < high)) next = (low + high) / 2
    // Flow and head together, so that neither end of the line divides by nothing.
    speed = n * Math.sqrt((square + w * head) / (m * m + w * h))
    const moved = Math.abs(next - at)
    // Well above the lowest line this is only where the search over the grid begins.
    if (moved < (speed > 1.1 * n ? 0.03 : 1e-12)) break
    at = next
  }
  return { speed, place: at }
}

/** Place and speed on the grid by Newton steps, each halved until it brings the point nearer. */
export function mapPlace(g: MapGrid, flow: number, head: number, start: Place): Place {
  let speed = Math.min(start.speed, 1.1 * g.top)
  let place = Math.max(-0.2, Math.min(1.2, start.place))
  let left = leftOver(g, speed, place, flow, head)
  for (let i = 0; i < 40 && left > 1e-21; i++) {
    const f1 = flowOut[0]! - flow
    const f2 = headOut[0]! - head
    const a = flowOut[1]!, b = flowOut[2]!, c = headOut[1]!, d = headOut[2]!
    const det = a * d - b * c
    let ds = (b * f2 - d * f1) / det
    let dp = (c * f1 - a * f2) / det
    const cut = Math.max(1, Math.abs(ds) / (0.3 * g.top), Math.abs(dp) / 0.4)
    ds /= cut
    dp /= cut
    let share = 1
    let after = leftOver(g, speed + ds, place + dp, flow, head)
    while (!(after < left) && share > 1e-3) {
      share /= 2
      after = leftOver(g, speed + share * ds, place + share * dp, flow, head)
    }
    if (!(after < left)) break
    speed += share * ds
    place += share * dp
    left = after
  }
  return { speed, place }
}

/** Square of what is left over, in parts of the map; leaves values and slopes at the place behind. */
function leftOver(g: MapGrid, speed: number, place: number, flow: number, head: number): number {
  gridAt(g.flow, speed, place, flowOut)
  gridAt(g.head, speed, place, headOut)
  const x = (flowOut[0]! - flow) / g.flowScale
  const y = (headOut[0]! - head) / g.headScale
  return x * x + y * y
}
