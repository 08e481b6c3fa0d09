import { type Regime } from './regimes.ts'

/** The coupled model at one shaft speed: every value by path, or what is missing, or the link that has no solution. */
export type Point = {
  readonly speed: number
  /** Full throttle, or the idle that the sheet describes. */
  readonly kind: 'full' | 'idle'
  /** What sets boost here: its target, a shut wastegate, or one that opens too early, too late or not far enough. */
  readonly setBy?: Regime
  readonly values: Readonly<Record<string, number>>
  /** For each value that could not be had: the fields it waits for. */
  readonly missing: Readonly<Record<string, readonly string[]>>
  /** For each value that has no physical answer: which link, and why. */
  readonly failed: Readonly<Record<string, Failure>>
  readonly residuals: Readonly<Record<string, number>>
}
export type Failure = { readonly link: string; readonly says: string }

/** The whole build: idle, the sweep, and what is true of the build as a whole. */
export type Solved = {
  readonly idle: Point
  readonly points: readonly Point[]
  readonly build: Readonly<Record<string, number>>
  readonly missing: Readonly<Record<string, readonly string[]>>
  readonly failed: Readonly<Record<string, Failure>>
}
