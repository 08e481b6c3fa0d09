import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { close, createIndex } from 'pagefind'
import { outDir } from '../root.ts'

/**
 * What Pagefind writes beside the index and no page of ours asks for: its ready-made interfaces and
 * the engine for pages in an unknown language.
 */
const neverAsked = [
  'pagefind-ui.js', 'pagefind-ui.css', 'pagefind-modular-ui.js', 'pagefind-modular-ui.css',
  'pagefind-component-ui.js', 'pagefind-component-ui.css', 'pagefind-highlight.js', 'wasm.unknown.pagefind',
]

/** Hints, controls, formulas and the cautions that every page ends with: they are on too many pages to tell one from another. */
const tellNothing = ['.hint', '.cautions', 'math', 'select', 'textarea', 'button', '.sheet']

/** Writes the search index over the built pages. Only what stands in `data-pagefind-body` is found. */
export async function buildSearch(): Promise<void> {
  const { index, errors } = await createIndex({ forceLanguage: 'en', excludeSelectors: tellNothing })
  if (!index) throw new Error(`The search index could not be begun: ${errors.join('; ')}`)
  const read = await index.addDirectory({ path: outDir })
  const written = await index.writeFiles({ outputPath: join(outDir, 'pagefind') })
  const problems = [...read.errors, ...written.errors]
  if (problems.length > 0) throw new Error(`The search index could not be written: ${problems.join('; ')}`)
  await Promise.all(neverAsked.map((name) => rm(join(outDir, 'pagefind', name), { force: true })))
  await close()
  console.log(`Search index over ${read.page_count} pages`)
}
