import { type Log } from './log.ts'

/** A stretch of the log: from one row to another, both counted. */
export type Pull = { readonly from: number; readonly to: number }

/** Throttle that counts as full, and manifold pressure (over the log's own span) that stands for it where throttle was not logged. */
const fullThrottle = 0.9, highPressure = 0.75
/** Shortest pull in seconds, and the least share by which speed must rise. */
const leastSeconds = 1.5, leastRise = 0.25
/** What a misread sample may last without ending a pull, in seconds. */
const gap = 0.25

/** Stretches at full throttle in which shaft speed keeps rising, the widest first. */
export function pullsOf({ count, of }: Log): Pull[] {
  const time = of.time!, speed = of.speed!
  const full = fullAt(count, of)
  const found: Pull[] = []
  let from = -1, lastGood = -1, top = 0
  const close = (to: number): void => {
    if (from >= 0 && time[to]! - time[from]! >= leastSeconds) {
      const a = firstReal(speed, from, to), b = lastReal(speed, from, to)
      if (b > a * (1 + leastRise)) found.push({ from, to })
    }
    from = -1
  }
  for (let i = 0; i < count; i++) {
    const n = speed[i]!
    // A shift: speed falls well below what it had reached.
    const good = full(i) && !(n < top * 0.97 && from >= 0)
    if (good) {
      if (from < 0) { from = i; top = 0 }
      if (n > top) top = n
      lastGood = i
    } else if (from >= 0 && time[i]! - time[lastGood]! > gap) { close(lastGood); top = 0 }
  }
  if (from >= 0) close(lastGood)
  const width = ({ from: a, to: b }: Pull): number => lastReal(speed, a, b) - firstReal(speed, a, b)
  return found.sort((a, b) => width(b) - width(a))
}

function fullAt(count: number, of: Log['of']): (i: number) => boolean {
  if (of.throttle) { const t = of.throttle; return (i) => t[i]! >= fullThrottle }
  const pressure = of.manifold ?? of.boost
  if (!pressure) return () => true
  let low = Infinity, high = -Infinity
  for (let i = 0; i < count; i++) { const p = pressure[i]!; if (p < low) low = p; if (p > high) high = p }
  const bound = low + highPressure * (high - low)
  return (i) => pressure[i]! >= bound
}
const firstReal = (a: Float64Array, from: number, to: number): number => { for (let i = from; i <= to; i++) if (Number.isFinite(a[i]!)) return a[i]!; return NaN }
const lastReal = (a: Float64Array, from: number, to: number): number => { for (let i = to; i >= from; i--) if (Number.isFinite(a[i]!)) return a[i]!; return NaN }
