import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import type { ComponentType } from 'preact'

/**
 * What a figure may draw from: one build and what its coupled solve found. `point` is the point of greatest power, with idle and build
 * values beneath; `weighed` are its margins. `beside` are the solves of the sheets that the figure asked for beside it, in their order, and
 * `weighedBeside` the margins of each.
 */
export type Build = {
  readonly sheet: Sheet; readonly solved: Solved; readonly point: Readonly<Record<string, number>>; readonly weighed: readonly Weighed[]
  readonly beside: readonly Solved[]; readonly weighedBeside: readonly (readonly Weighed[])[]
}
export type Table = { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }

/**
 * A figure drawn by code from numbers. `D` is the little it draws from: plain data, so that a figure that moves can carry it to
 * the browser.
 */
export type Figure<D> = {
  readonly title: string
  /** Sheets to be solved beside the one shown, for a figure that compares: the same build elsewhere. */
  readonly beside?: (sheet: Sheet) => readonly Sheet[]
  /** The numbers, SI, taken from a build. */
  readonly from: (build: Build) => D
  /** What is to be seen, in words. */
  readonly summary: (data: D, system: System) => string
  /** The drawing: SVG, colours by class (`line`, `two`, `thin`, `area`, `fill`, `fill-accent`, text). */
  readonly Picture: ComponentType<{ data: D; system: System }>
  readonly table: (data: D, system: System) => Table
  /** It has a control: it comes alive when reached for, even with the demo build's numbers. */
  readonly moves?: true
}

export const figure = <D>(of: Figure<D>): Figure<D> => of
export type AnyFigure = Figure<unknown>
