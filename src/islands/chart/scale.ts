import { ticks } from 'd3-array'

export type Scale = { readonly at: (value: number) => number; readonly back: (at: number) => number; readonly ticks: readonly number[] }

/** A straight scale from values to places on the page, ends rounded out to ticks when asked. */
export function scale([low, high]: readonly [number, number], [from, to]: readonly [number, number], count: number, nice = false): Scale {
  let a = low, b = high
  // Apart by no more than rounding, they are one value: steps between them could not be told.
  if (b - a <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))) { a -= Math.abs(a) * 0.1 || 1; b += Math.abs(b) * 0.1 || 1 }
  let marks = ticks(a, b, count)
  if (nice && marks.length > 1) {
    const step = marks[1]! - marks[0]!
    a = Math.floor(a / step + 1e-9) * step
    b = Math.ceil(b / step - 1e-9) * step
    marks = ticks(a, b, count)
  }
  return { at: (value) => from + ((value - a) / (b - a)) * (to - from), back: (at) => a + ((at - from) / (to - from)) * (b - a), ticks: marks }
}
