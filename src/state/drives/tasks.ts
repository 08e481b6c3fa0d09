import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { Mapping } from '@trochoid/compute/log/channels.ts'
import type { LogCheck } from '@trochoid/compute/log/check.ts'
import type { Bad } from '@trochoid/compute/log/rows.ts'
import type { CircuitId } from '@trochoid/compute/session/circuits.ts'
import type { Lap } from '@trochoid/compute/session/piece.ts'
import type { SessionResult } from '@trochoid/compute/session/session.ts'

/** What the pages of session and log ask of their worker. */
export type Task =
  | { readonly kind: 'session'; readonly sheet: Sheet; readonly over: CircuitId | Lap; readonly minutes: number; readonly start: 'cold' | 'warm' }
  | { readonly kind: 'drive'; readonly file: File; readonly sheet: Sheet }
  | { readonly kind: 'open'; /** Null for the invented log. */ readonly file: File | null; readonly sheet: Sheet; /** By signature, what the reader said before. */ readonly known: Readonly<Record<string, Mapping>> }
  | { readonly kind: 'map'; readonly mapping: Mapping; readonly sheet: Sheet }
  | { readonly kind: 'check'; readonly sheet: Sheet; /** Seconds of the log. */ readonly from: number; readonly to: number }
export type Opened = {
  readonly name: string; readonly invented: boolean; readonly names: readonly string[]; readonly units: readonly string[]; readonly signature: string; readonly mapping: Mapping
  readonly rows: number; readonly bad: Bad; readonly cut: boolean
  /** What is missing before it can be laid over the sheet. */
  readonly fault: string | null
  readonly outOfTime: number; readonly seconds: number
  /** Shaft speed and manifold pressure over time, thinned for drawing; SI. */
  readonly trace: { readonly t: readonly number[]; readonly speed: readonly (number | null)[]; readonly manifold: readonly (number | null)[] }
  readonly pulls: readonly { readonly from: number; readonly to: number; readonly low: number; readonly high: number }[]
}
export type Told =
  | { readonly kind: 'progress'; readonly part: number }
  | { readonly kind: 'session'; readonly result: SessionResult; readonly from100to200: number | null }
  | { readonly kind: 'drive'; readonly lap: Lap; readonly bad: number }
  | { readonly kind: 'opened'; readonly opened: Opened }
  | { readonly kind: 'check'; readonly check: LogCheck; readonly from: number; readonly to: number }
  | { readonly kind: 'failed'; readonly says: string }
