import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { base, outDir, root } from '../root.ts'
import { builtPages, type BuiltPage } from '../site/pages.ts'

const listed = join(root, 'scripts', 'addresses', 'published.txt')
const moves = join(root, 'scripts', 'addresses', 'moved.json')

/** Addresses below the base that were published once. Links to them stand in other people's pages, messages and prints. */
export const published = (): readonly string[] => (existsSync(listed) ? readFileSync(listed, 'utf8').split('\n').map((line) => line.trim()).filter((line) => line !== '' && !line.startsWith('#')) : [])
/** Where a page that is no more has gone: old address, new address with or without a place on it. */
export const moved = (): Readonly<Record<string, string>> => JSON.parse(readFileSync(moves, 'utf8')) as Record<string, string>

/** Published addresses that the built pages answer no more, and that lead nowhere. A place within a page, `articles/a/#why`, has to be there still. */
export function lost(before: readonly string[], now: ReadonlySet<string>, gone: Readonly<Record<string, string>>): readonly string[] {
  const pageOf = (path: string) => path.split('#')[0]!
  return before.filter((path) => {
    const to = gone[pageOf(path)]
    return !now.has(path) && !(to !== undefined && now.has(pageOf(to)))
  })
}

/** What the built pages answer: each page, and each heading of an article, which people send one another. */
export const addressesOf = (pages: readonly BuiltPage[]): readonly string[] => pages.flatMap(({ path, kind, html }) =>
  [path, ...(kind === 'article' ? [...html.matchAll(/<h[23] id="([^"]+)"/g)].map(([, id]) => `${path}#${id!}`) : [])])

/**
 * Holds the site to the addresses it once published: each is still a page, or a page that leads on. Writes those pages, the map of the site for
 * search engines where the host is known, and the list of today's addresses.
 */
export function buildAddresses(): void {
  const built = builtPages(outDir).filter(({ kind }) => kind !== 'not-found')
  const pages = built.map(({ path }) => path)
  const gone = moved()
  const missing = lost(published(), new Set(addressesOf(built)), gone)
  if (missing.length > 0) throw new Error(`Published addresses that are no more: ${missing.join(', ')}. Say in scripts/addresses/moved.json where a page has gone; pin an id to the heading that now answers: \`## Its words [#the-old-id]\`.`)
  for (const [from, to] of Object.entries(gone)) {
    mkdirSync(join(outDir, from), { recursive: true })
    writeFileSync(join(outDir, from, 'index.html'), leadsOn(base + to))
  }
  writeFileSync(join(outDir, 'addresses.txt'), `${pages.map((path) => base + path).join('\n')}\n`)
  const { SITE } = process.env
  if (SITE) writeFileSync(join(outDir, 'sitemap.xml'), `<?xml version="1.0" encoding="UTF-8"?>\n<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n${pages.map((path) => `<url><loc>${new URL(base + path, SITE).href}</loc></url>`).join('\n')}\n</urlset>\n`)
}

/** A page that leads on, with the place after `#` that was asked for unless the new address names one. */
export const leadsOn = (to: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="content-security-policy" content="default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; base-uri 'none'; object-src 'none'; form-action 'none'; worker-src 'self'">
<title>This page has moved</title>
<meta name="robots" content="noindex">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="canonical" href="${to}">
<script src="${base}moved.js"></script>
<noscript><meta http-equiv="refresh" content="0; url=${to}"></noscript>
</head>
<body data-page="moved"><main><h1>This page has moved</h1><p><a href="${to}">To its new place</a></p></main></body>
</html>
`
