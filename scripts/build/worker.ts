import { join } from 'node:path'
import { generateSW } from 'workbox-build'
import { outDir } from '../root.ts'

/** No single file of the site should come near this; one that does must be noticed, not left out silently. */
const largestFile = 4 * 1024 * 1024

/**
 * Writes `sw.js`, which keeps the whole site for reading without a network.
 *
 * Addresses in it are relative to itself, so the site may live under any path. A new version waits until the
 * reader asks for it. Pages that are not kept go to the network; with none, our own "not found" answers.
 */
export async function buildWorker(): Promise<void> {
  const { count, size, warnings } = await generateSW({
    globDirectory: outDir,
    globPatterns: ['**/*'],
    // The pictures are asked for once, when the site is put on a home screen, with a network; one is the read-me's.
    globIgnores: ['sw.js', '**/*.map', 'icon-*.png', 'margins.png'],
    swDest: join(outDir, 'sw.js'),
    inlineWorkboxRuntime: true,
    sourcemap: false,
    mode: 'production',
    directoryIndex: 'index.html',
    dontCacheBustURLsMatching: /^assets\//,
    // Pagefind stamps its entry with the time (`ts`); a link carries a calculation after `?` on pages that do not differ by it.
    ignoreURLParametersMatching: [/./],
    maximumFileSizeToCacheInBytes: largestFile,
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
  console.log(`Service worker keeps ${count} files, ${Math.round(size / 1024)} kB before compression`)
}
