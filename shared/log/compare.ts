import { type Point } from '../build/point.ts'
import { channels, type ChannelId } from './channels.ts'
import { type Log } from './log.ts'
import { type Pull } from './pulls.ts'

/** One channel in one band of shaft speed: what was measured there and what the sheet says. SI. */
export type Band = { readonly speed: number; readonly measured: number; /** Standard deviation of the samples. */ readonly spread: number; readonly count: number; readonly predicted: number | null }
export type Laid = { readonly channel: ChannelId; readonly path: string; readonly bands: readonly Band[]; /** Mean of measured less predicted, with its standard error over the bands; null where nothing was predicted. */ readonly off: { readonly mean: number; readonly error: number; readonly ratio: number } | null }

/** Channels that are laid over the sheet, in the order of the sheet. */
export const laidOver = ['boost', 'lambda', 'primaryDuty', 'secondaryDuty', 'fuelPressure', 'charge', 'coolant', 'oil', 'oilPressure'] as const satisfies readonly ChannelId[]
export type LaidId = (typeof laidOver)[number]
/** Temperatures that a pull is too short to bring to where the sheet has them settled. */
export const slow: readonly ChannelId[] = ['coolant', 'oil', 'oilPressure']

/** Bands of equal width over the pull's own speeds: their middles, in rad/s. */
export function bandsOf({ of }: Log, { from, to }: Pull, wanted = 12): number[] {
  let low = Infinity, high = -Infinity
  for (let i = from; i <= to; i++) { const n = of.speed![i]!; if (n < low) low = n; if (n > high) high = n }
  const count = Math.max(3, Math.min(wanted, Math.floor((to - from) / 4)))
  return Array.from({ length: count }, (_, k) => low + ((high - low) * (k + 0.5)) / count)
}

/** Mean and spread of a channel in each band. */
export function measuredIn(log: Log, pull: Pull, bands: readonly number[], values: ArrayLike<number>): { readonly mean: number; readonly spread: number; readonly count: number }[] {
  const half = bands.length > 1 ? (bands[1]! - bands[0]!) / 2 : Infinity
  const low = bands[0]! - half
  const sum = new Float64Array(bands.length), squares = new Float64Array(bands.length), count = new Float64Array(bands.length)
  const speed = log.of.speed!
  // Sums about the first value: squares of large numbers would lose the spread.
  const origin = values[pull.from]! || 0
  for (let i = pull.from; i <= pull.to; i++) {
    const v = values[i]! - origin, k = Math.min(bands.length - 1, Math.floor((speed[i]! - low) / (2 * half)))
    if (!Number.isFinite(v) || k < 0) continue
    sum[k]! += v
    squares[k]! += v * v
    count[k]!++
  }
  return bands.map((_, k) => {
    const n = count[k]!, mean = sum[k]! / n
    return { mean: mean + origin, spread: n > 1 ? Math.sqrt(Math.max(0, (squares[k]! - n * mean * mean) / (n - 1))) : 0, count: n }
  })
}

/** Gauge boost as logged: its own column, or manifold pressure less the air outside. */
export const boostOf = (of: Log['of'], outside: number): ArrayLike<number> | undefined => of.boost ?? of.manifold?.map((p) => p - outside)
export const manifoldOf = (of: Log['of'], outside: number): ArrayLike<number> | undefined => of.manifold ?? of.boost?.map((p) => p + outside)

/** The pull over the solved points of the same speeds, channel by channel. */
export function lay(log: Log, pull: Pull, points: readonly Point[], outside: number): Laid[] {
  const bands = points.map((p) => p.speed)
  return laidOver.flatMap((channel): Laid[] => {
    const values = channel === 'boost' ? boostOf(log.of, outside) : log.of[channel]
    if (!values) return []
    const path = channels[channel].value
    const measured = measuredIn(log, pull, bands, values)
    const list = measured.flatMap(({ mean, spread, count }, k): Band[] => (count > 0 ? [{ speed: bands[k]!, measured: mean, spread, count, predicted: points[k]!.values[path] ?? null }] : []))
    return [{ channel, path, bands: list, off: offOf(list) }]
  })
}

function offOf(bands: readonly Band[]): Laid['off'] {
  const known = bands.filter((b): b is Band & { predicted: number } => b.predicted !== null)
  if (known.length === 0) return null
  const off = known.map((b) => b.measured - b.predicted)
  const mean = off.reduce((a, b) => a + b, 0) / off.length
  const variance = off.length > 1 ? off.reduce((a, b) => a + (b - mean) ** 2, 0) / (off.length - 1) : 0
  const measured = known.reduce((a, b) => a + b.measured, 0), predicted = known.reduce((a, b) => a + b.predicted, 0)
  return { mean, error: Math.sqrt(variance / off.length), ratio: measured / predicted }
}
