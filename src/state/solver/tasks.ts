import type { Thresholds, Weighed } from '@trochoid/compute/build/margins.ts'
import type { Field } from '@trochoid/compute/build/field.ts'
import type { Worth } from '@trochoid/compute/build/measureNext.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Cure } from '@trochoid/compute/build/remedies.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { Chance } from '@trochoid/compute/uncertainty/chances.ts'
import type { Plan } from '@trochoid/compute/uncertainty/sampling.ts'

/** What a page asks of the solver: ids, numbers and declarations cross, never functions. */
export type Task =
  | { readonly kind: 'fields' }
  | { readonly kind: 'look'; readonly turn: number; readonly sheet: Sheet; readonly thresholds: Thresholds; /** Over all speeds, or as few as typing allows. */ readonly fine: boolean }
  | { readonly kind: 'remedies'; readonly margin: string; readonly sheet: Sheet; readonly thresholds: Thresholds }
  | { readonly kind: 'next'; readonly sheet: Sheet; readonly thresholds: Thresholds }
  | { readonly kind: 'sample'; readonly plan: Plan; readonly from: number; readonly to: number }
  | { readonly kind: 'count'; readonly plan: Plan; readonly lefts: Float64Array }
export type Told =
  | { readonly kind: 'fields'; readonly fields: readonly Field[]; /** The invented builds. */ readonly demos: Readonly<Record<string, Sheet>> }
  | { readonly kind: 'look'; readonly turn: number; readonly solved: Solved; readonly weighed: readonly Weighed[] }
  | { readonly kind: 'cure'; readonly cure: Cure }
  | { readonly kind: 'progress'; readonly done: number; readonly all: number }
  | { readonly kind: 'worth'; readonly worth: readonly Worth[] }
  | { readonly kind: 'sampled'; readonly lefts: Float64Array }
  | { readonly kind: 'chances'; readonly chances: readonly Chance[] }
  | { readonly kind: 'done' }
  | { readonly kind: 'failed'; readonly says: string }
