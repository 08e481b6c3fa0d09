import { type BuiltPage } from '../../scripts/site/pages.ts'

/** How much a page may send, in kB (1000 bytes) after Brotli. */
export type Budget = {
  name: string
  of: (page: BuiltPage) => boolean
  /** Everything up to a second after loading, not scrolled. */
  cold: number
  /** Everything after scrolling through and using every control, arithmetic in the fields apart. */
  allIn?: number
  /** All are of one form and load the same code. */
  alike?: true
}

export const budgets: readonly Budget[] = [
  { name: 'an article of text', of: ({ kind, live }) => kind === 'article' && !live, cold: 16 },
  { name: 'an article with calculators', of: ({ kind, live }) => kind === 'article' && live, cold: 28, allIn: 60 },
  { name: 'a calculator', of: ({ kind }) => kind === 'calculator', cold: 30, allIn: 55, alike: true },
  { name: 'the margins', of: ({ kind }) => kind === 'margins', cold: 45, allIn: 90 },
  { name: 'the chances', of: ({ kind }) => kind === 'chance', cold: 25, allIn: 110 },
  { name: 'two builds', of: ({ kind }) => kind === 'compare', cold: 25, allIn: 110 },
]
