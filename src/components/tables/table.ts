/** A table of the reference, on a page of its own, made from what the calculators run on. */
export type ReferenceTable = {
  readonly id: string
  readonly title: string
  /** Other words under which it is looked for. */
  readonly also: string
  /** What it is for, in a sentence. */
  readonly says: string
  readonly parts: readonly Part[]
  /** What the table cannot tell. */
  readonly notes: readonly string[]
  readonly sources: readonly string[]
  readonly cautions: readonly string[]
  /** Calculators that use it. */
  readonly calculators: readonly string[]
}
export type Part = { readonly id: string; readonly title: string; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] }

/** A number as it stands in a table: so many figures after the point, and a real minus sign. */
export const figure = (value: number | null, after = 0): string => (value === null ? '–' : value.toLocaleString('en-GB', { minimumFractionDigits: after, maximumFractionDigits: after }).replace('-', '−'))
