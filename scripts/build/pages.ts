import { globSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { outDir } from '../root.ts'
import { run } from '../run.ts'

/** Writes every page of the site, from `src/` and `content/`. */
export async function buildPages(): Promise<void> {
  const code = await run('astro', ['build'])
  if (code !== 0) throw new Error('The pages could not be built.')
  const parts = partsIn(join(outDir, 'assets'))
  for (const file of globSync('**/*.html', { cwd: outDir })) {
    const path = join(outDir, file)
    writeFileSync(path, withParts(withoutIdleHashes(readFileSync(path, 'utf8')), parts))
  }
}

/**
 * Takes the hashes of inline scripts out of the policy of a page that has none: Astro lists those of its own islands on every page.
 * They do not compress, and the policy is stricter without them.
 */
export function withoutIdleHashes(html: string): string {
  if (/<script(?![^>]*\ssrc=)(?![^>]*type="application\/json")/.test(html)) return html
  return html.replace(/(script-src [^;"]*)/, (policy) => policy.replace(/ 'sha256-[^']*'/g, ''))
}

/** Files of the browser's code that hold one calculation as their default; the bundler may give it another name where more of the file is wanted elsewhere. */
const partsIn = (folder: string): ReadonlyMap<string, string> =>
  new Map(globSync('*.calc.*.js', { cwd: folder }).filter((file) => readFileSync(join(folder, file), 'utf8').includes(' as default')).map((file) => [file.split('.calc.')[0]!, file]))

/** Names, in place of a calculation, the file of the browser's code that holds it, so that its page needs no list of all of them. */
export const withParts = (html: string, parts: ReadonlyMap<string, string>): string =>
  html.replace(/ data-file="[a-z]+\/(\w+)"/g, (whole, name: string) => (parts.has(name) ? ` data-file="${parts.get(name)!}"` : whole))
