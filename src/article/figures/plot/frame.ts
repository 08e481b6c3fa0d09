import { scale, type Scale } from '../../../islands/chart/scale.ts'

/** Where a drawing lies on its page of 640 by `height`, and how values become places on it. */
export type Frame = { readonly width: number; readonly height: number; readonly left: number; readonly right: number; readonly top: number; readonly bottom: number; readonly x: Scale; readonly y: Scale }
type Ends = readonly [number, number]
type Wish = { readonly x: Ends; readonly y: Ends; readonly height?: number; readonly log?: true }

/** A frame whose y axis ends on ticks; `log` draws y by its logarithm. */
export function frame({ x, y, height = 350, log }: Wish): Frame {
  const left = 66, right = 614, top = 40, bottom = height - 58
  return { width: 640, height, left, right, top, bottom, x: scale(x, [left, right], 6), y: log ? logScale(y, [bottom, top]) : scale(y, [bottom, top], 5, true) }
}

function logScale([low, high]: Ends, ends: Ends): Scale {
  const by = scale([Math.log(low), Math.log(high)], ends, 2)
  const ticks = [1, 10, 100, 1000].flatMap((decade) => [decade, 2 * decade, 5 * decade]).filter((t) => t >= low && t <= high)
  return { at: (value) => by.at(Math.log(value)), back: (at) => Math.exp(by.back(at)), ticks }
}
