import { globSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { outDir, root } from '../root.ts'
import { run } from '../run.ts'
import { withShortNumbers } from './shortNumbers.ts'

/** Writes every page of the site, from `src/` and `content/`. */
export async function buildPages(): Promise<void> {
  const code = await run('astro', ['build'])
  if (code !== 0) throw new Error('The pages could not be built.')
  const parts = partsIn(join(outDir, 'assets'))
  for (const file of globSync('**/*.html', { cwd: outDir })) {
    const path = join(outDir, file)
    writeFileSync(path, withParts(withShortNumbers(withoutIdleHashes(readFileSync(path, 'utf8'))), parts))
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

/**
 * Files of the browser's code that hold one calculation, `injectorDuty`, or one figure, `engine-on-map`, as their default; the bundler
 * may give it another name where more of the file is wanted elsewhere.
 */
const partsIn = (folder: string): ReadonlyMap<string, string> => {
  const figures = new Set(globSync('*.tsx', { cwd: join(root, 'src/article/figures') }).map((file) => file.slice(0, -'.tsx'.length)))
  const named = globSync('*.js', { cwd: folder }).map((file) => [file.split('.')[0]!, file] as const)
  return new Map(named.filter(([name, file]) => (file.includes('.calc.') || figures.has(name)) && readFileSync(join(folder, file), 'utf8').includes(' as default')))
}

/** Names, in place of a calculation or a figure, the file of the browser's code that holds it, so that its page needs no list of all of them. */
export const withParts = (html: string, parts: ReadonlyMap<string, string>): string =>
  html.replace(/ data-file="[a-z]+\/([\w-]+)"/g, (whole, name: string) => (parts.has(name) ? ` data-file="${parts.get(name)!}"` : whole))
