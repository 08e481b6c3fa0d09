import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { generateSW, getManifest } from 'workbox-build'
import { edition } from '../../edition.ts'
import { outDir } from '../../root.ts'
import { bySort, writePacks } from './packs.ts'
import { takeFromPacks } from './takeFromPacks.ts'

/** No single file of the site should come near this; one that does must be noticed, not left out silently. */
const largestFile = 4 * 1024 * 1024

const chosen = {
  globDirectory: outDir,
  globPatterns: ['**/*'],
  // The pictures are asked for once, when the site is put on a home screen, with a network; one is the read-me's. Search engines alone read the last two.
  globIgnores: ['sw.js', '**/*.map', 'icon-*.png', 'margins.png', 'assets/kept-*.json', 'sitemap.xml', 'addresses.txt'],
  maximumFileSizeToCacheInBytes: largestFile,
  dontCacheBustURLsMatching: /^assets\//,
}

/**
 * Writes `sw.js`, which keeps the whole site for reading without a network.
 *
 * Addresses in it are relative to itself, so the site may live under any path. A new version waits until the
 * reader asks for it. Pages that are not kept go to the network; with none, our own "not found" answers.
 */
export async function buildWorker(): Promise<void> {
  const { manifestEntries, size, count } = await getManifest(chosen)
  const { packs, sent } = writePacks(outDir, manifestEntries.map(({ url }) => url))
  const version = createHash('sha256').update(Object.keys(packs).join()).digest('hex').slice(0, 7)
  // Kept like the rest: a page is then told of the version that it was kept with.
  writeFileSync(join(outDir, 'kept.json'), JSON.stringify({ edition, version, files: count, stored: size, sent }))
  const { warnings } = await generateSW({
    ...chosen,
    manifestTransforms: [(entries) => ({ manifest: entries.toSorted((a, b) => bySort(a.url, b.url)), warnings: [] })],
    swDest: join(outDir, 'sw.js'),
    inlineWorkboxRuntime: true,
    sourcemap: false,
    mode: 'production',
    directoryIndex: 'index.html',
    // Pagefind stamps its entry with the time (`ts`); a link carries a calculation after `?` on pages that do not differ by it.
    ignoreURLParametersMatching: [/./],
    skipWaiting: false,
    clientsClaim: true,
    cleanupOutdatedCaches: true,
    runtimeCaching: [
      {
        urlPattern: ({ request }) => request.mode === 'navigate',
        handler: 'NetworkOnly',
        options: { precacheFallback: { fallbackURL: '404.html' } },
      },
    ],
  })
  if (warnings.length > 0) throw new Error(`Not everything can be kept offline: ${warnings.join('; ')}`)
  const worker = join(outDir, 'sw.js')
  writeFileSync(worker, `(${takeFromPacks.toString()})(self, ${JSON.stringify(packs)});\n${readFileSync(worker, 'utf8')}`)
  console.log(`Service worker keeps ${count} files in ${Object.keys(packs).length} packs, ${Math.round(size / 1e3)} kB, ${Math.round(sent / 1e3)} kB as sent`)
}
