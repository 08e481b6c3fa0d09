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

/**
 * Pages that send more than their budget when all of them is used, with what each may send, in kB, until it has come down. The limit is
 * the budget; this list is what is owed to it: no page may grow, and none may be added.
 */
export const owing: Readonly<Record<string, number>> = {
  'articles/how-a-two-rotor-breathes/': 63.9, 'articles/placing-the-engine-on-a-compressor-map/': 60.6, 'articles/sizing-the-radiator/': 61.1,
  'calculators/oil-for-clearance/': 56.7, 'calculators/boost-threshold/': 56, 'calculators/track-session/': 55.6, 'calculators/time-to-boost/': 58,
  'margins/': 97.6,
}
