import { type Sources } from './source.ts'

/** The three sources that are not books. Each discipline declares its own beside its formulas. */
export const sources = {
  'derived': { title: 'Derived here from conservation and geometry; the derivation stands beside the formula', seen: 'no source' },
  'common-practice': { title: 'Common practice of the trade, no source', seen: 'no source' },
  'definition': { title: 'Definition', seen: 'no source' },
} as const satisfies Sources
