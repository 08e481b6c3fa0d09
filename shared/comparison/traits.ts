import { type Point, type Solved } from '../build/point.ts'

/** What a driver and a dynamometer would notice of a build: values of its sweep, SI; nothing where the model has none. */
export type Traits = {
  /** Lowest speed from which boost stays at its target. */
  readonly threshold: number | null
  readonly power: Peak | null
  readonly torque: Peak | null
  /** Highest pressure before the turbine over manifold pressure. */
  readonly backPressure: Peak | null
  readonly exhaust: Peak | null
  readonly charge: Peak | null
}
export type Peak = { readonly value: number; readonly speed: number }

export function traitsOf({ points, build }: Solved): Traits {
  const peak = (path: string): Peak | null => points.reduce<Peak | null>((best, p) => { const value = p.values[path]; return value !== undefined && value > (best?.value ?? -Infinity) ? { value, speed: p.speed } : best }, null)
  return {
    threshold: build['boost.thresholdSpeed'] ?? null, power: peak('engine.power'), torque: peak('engine.torque'), backPressure: peak('engine.backPressureRatio'),
    exhaust: peak('cooling.exhaustTemperature'), charge: peak('engine.chargeTemperature'),
  }
}

/** A value of the sweep at any speed within it, on straight lines; nothing beyond its ends or beside a speed without a solution. */
export function valueAtSpeed(points: readonly Point[], path: string, speed: number): number | null {
  const own = points.find((p) => Math.abs(p.speed - speed) <= 1e-9 * speed)
  if (own) return own.values[path] ?? null
  for (const [i, low] of points.entries()) {
    const high = points[i + 1]
    if (!high || speed < low.speed || speed > high.speed) continue
    const a = low.values[path]
    const b = high.values[path]
    return a === undefined || b === undefined ? null : a + ((b - a) * (speed - low.speed)) / (high.speed - low.speed)
  }
  return null
}

/** Speeds at which two sweeps can be laid over each other: from the lower start to the higher end. */
export function sharedSpeeds(a: readonly Point[], b: readonly Point[]): readonly number[] {
  const all = [...a, ...b].map((p) => p.speed)
  if (all.length === 0) return []
  const same = a.length === b.length && a.every((p, i) => Math.abs(p.speed - b[i]!.speed) < 1e-9 * p.speed)
  if (same) return a.map((p) => p.speed)
  const low = Math.min(...all)
  const high = Math.max(...all)
  const count = Math.max(a.length, b.length)
  return Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1))
}

/** Where torque differs most, as a share of the first build's, up to a speed. */
export function largestTorqueDifference(a: readonly Point[], b: readonly Point[], upTo: number): { readonly speed: number; readonly before: number; readonly after: number } | null {
  let most: { speed: number; before: number; after: number } | null = null
  for (const speed of sharedSpeeds(a, b)) {
    if (speed > upTo) continue
    const before = valueAtSpeed(a, 'engine.torque', speed)
    const after = valueAtSpeed(b, 'engine.torque', speed)
    if (before === null || after === null || before <= 0) continue
    if (most === null || Math.abs(after - before) / before > Math.abs(most.after - most.before) / most.before) most = { speed, before, after }
  }
  return most
}
