import { type Weighed } from '../build/margins.ts'
import { type Solved } from '../build/point.ts'
import { type Sheet } from '../build/sheet.ts'

/** One of two builds: its sheet, solved and weighed. */
export type Side = { readonly sheet: Sheet; readonly solved: Solved; readonly weighed: readonly Weighed[] }
