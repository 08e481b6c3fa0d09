import type { Opened } from './tasks.ts'

/** As many points as a screen is wide; each the mean of what it stands for. */
const points = 600

export function thinned(time: Float64Array, speed: Float64Array, pressure: ArrayLike<number> | null | undefined): Opened['trace'] {
  const end = time.at(-1)! || 1
  const count = Math.min(points, time.length)
  const sum = [new Float64Array(count), new Float64Array(count)], number = [new Float64Array(count), new Float64Array(count)]
  for (let i = 0; i < time.length; i++) {
    const k = Math.min(count - 1, Math.floor((time[i]! / end) * count))
    for (const [c, values] of [speed, pressure].entries()) {
      const v = values?.[i]
      if (v !== undefined && Number.isFinite(v)) { sum[c]![k]! += v; number[c]![k]!++ }
    }
  }
  const means = (c: number): (number | null)[] => Array.from(sum[c]!, (total, k) => (number[c]![k]! > 0 ? total / number[c]![k]! : null))
  return { t: Array.from({ length: count }, (_, k) => (end * (k + 0.5)) / count), speed: means(0), manifold: means(1) }
}
