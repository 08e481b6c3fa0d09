import { globSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { outDir } from '../root.ts'
import { run } from '../run.ts'

/** Writes every page of the site, from `src/` and `content/`. */
export async function buildPages(): Promise<void> {
  const code = await run('astro', ['build'])
  if (code !== 0) throw new Error('The pages could not be built.')
  for (const file of globSync('**/*.html', { cwd: outDir })) {
    const path = join(outDir, file)
    writeFileSync(path, withoutIdleHashes(readFileSync(path, 'utf8')))
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
