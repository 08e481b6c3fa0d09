/** The parts of the handbook, as the head of every page names them. */
export const parts = [
  ['/articles/', 'Contents'],
  ['/calculators/', 'Calculators'],
  ['/build/', 'Build sheet'],
  ['/margins/', 'Margins'],
  ['/symptoms/', 'Symptoms'],
  ['/reference/', 'Reference'],
  ['/search/', 'Search'],
] as const

/** What is done with one build: a second row on each of these pages, and on none other, so that the head stays short. */
export const ofTheBuild: readonly (readonly [path: string, name: string])[] = [
  ['/build/', 'Sheet'],
  ['/margins/', 'Margins'],
  ['/chance/', 'Chance'],
  ['/compare/', 'Two builds'],
  ['/sweep/', 'Speed sweep'],
  ['/maps/', 'Compressor maps'],
  ['/turbochargers/', 'Two turbochargers'],
  ['/session/', 'Track session'],
  ['/log/', 'Log check'],
  ['/before-first-start/', 'Before first start'],
  ['/record/', 'Build record'],
  ['/report/', 'Report'],
  ['/two-stages/', 'Hand-over'],
  ['/which-oil/', 'Which oil'],
  ['/mix-card/', 'Mix card'],
]
