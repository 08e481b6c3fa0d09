/** A published work or data set on which formulas, tables or checks rest. */
export type Source = {
  readonly title: string
  readonly author?: string
  readonly year?: string
  readonly place?: string
  /** The source that lists the same work: a chapter, or another discipline's name for it. The list of sources then shows the work once. */
  readonly of?: string
  /** How it reached us: read in the book, through a library that carries it, or from memory. */
  readonly seen: 'read in the source' | 'confirmed by search' | 'carried by a reference library' | 'from memory' | 'no source'
}
export type Sources = Readonly<Record<string, Source>>
