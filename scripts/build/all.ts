import { buildAddresses } from './addresses.ts'
import { buildPages } from './pages.ts'
import { buildSearch } from './search.ts'
import { buildWorker } from './offline/worker.ts'

/** Pages, held to their published addresses, then the search index over them, then the service worker over both: each step reads what the one before wrote. */
export async function buildAll(): Promise<void> {
  await buildPages()
  buildAddresses()
  await buildSearch()
  await buildWorker()
}
