/** One published case: what went in, what the source says comes out, to its own precision. */
export type Check = {
  readonly id: string
  /** Id of the formula or calculation it tests. */
  readonly of: string
  /** SI numbers, or text with a unit as a reader would type it; choices, grades, curves as they are. */
  readonly in: Readonly<Record<string, unknown>>
  /** By name of the output (`out` for a formula with one): value and tolerance in that unit. */
  readonly out: Readonly<Record<string, Expected>>
  /** Author, title, year, place: where the number stands. */
  readonly source: string
  readonly confidence: Confidence
  /** Why the published answer and ours differ beyond the source's precision: such a case stays, and readers see it. */
  readonly differs?: string
}
export type Expected = { readonly value: number; readonly unit: string; readonly tolerance: number }
export type Confidence = 'read in the source' | 'confirmed by search' | 'computed by a reference library' | 'derived independently' | 'from memory'
