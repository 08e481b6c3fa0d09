import type { Thresholds } from '@trochoid/compute/build/margins.ts'
import type { Worth } from '@trochoid/compute/build/measureNext.ts'
import type { Cure } from '@trochoid/compute/build/remedies.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'

/** What a page asks of the worker: ids and numbers cross, never functions. */
export type Task =
  | { readonly kind: 'remedies'; readonly margin: string; readonly sheet: Sheet; readonly thresholds: Thresholds }
  | { readonly kind: 'next'; readonly sheet: Sheet; readonly thresholds: Thresholds }
export type Told =
  | { readonly kind: 'cure'; readonly cure: Cure }
  | { readonly kind: 'progress'; readonly done: number; readonly all: number }
  | { readonly kind: 'worth'; readonly worth: readonly Worth[] }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly says: string }
