/**
 * Editions of the handbook's formulas. A build remembers the edition that last weighed it; whoever corrects a formula so that
 * margins move adds the correction here and raises the edition by one, so that readers are told what moved and why.
 */
export type Correction = {
  /** The first edition that has it. */
  readonly edition: number
  readonly date: string
  /** What was wrong and what is right, for a builder. */
  readonly says: string
  /** Ids of the margins it can move. */
  readonly margins: readonly string[]
}
export const edition = 1
export const corrections: readonly Correction[] = []
