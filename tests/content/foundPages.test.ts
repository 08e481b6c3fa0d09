import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { pages } from '../../src/components/foundPages.ts'

/** Not searched for: the first page, the search itself, and the page that is shown where there is none. */
const apart = ['index', 'search', '404']

test('every page that is no article and no calculator is found by its title', () => {
  const own = readdirSync('src/pages').flatMap((file) => (file.endsWith('.astro') ? [file.slice(0, -'.astro'.length)] : [])).filter((name) => !apart.includes(name))
  const found = pages.map(({ url }) => url)
  for (const name of own) expect(found).toContain(`${name}/`)
})
