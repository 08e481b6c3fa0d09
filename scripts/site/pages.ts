import { existsSync, globSync, readFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import { outDir } from '../root.ts'

/** One page of the built site. */
export type BuiltPage = {
  /** Its path below the base: `articles/one-oil-two-jobs/`, empty for the first page. */
  path: string
  /** What `data-page` on its body says it is. */
  kind: string
  /** Whether anything on it comes alive in the browser. */
  live: boolean
  html: string
}

/** Every page of the built site, in the order of its path. */
export function builtPages(dir = outDir): BuiltPage[] {
  if (!existsSync(join(dir, 'index.html'))) throw new Error(`There is no built site in ${dir}: run \`npm run build\` first.`)
  return globSync('**/*.html', { cwd: dir }).map((file) => {
    const html = readFileSync(join(dir, file), 'utf8')
    return {
      path: file.split(sep).join('/').replace(/(^|\/)index\.html$/, '$1'),
      kind: /<body[^>]*\bdata-page="([^"]*)"/.exec(html)?.[1] ?? '',
      live: /<astro-island|\sdata-calculator=/.test(html),
      html,
    }
  }).sort((a, b) => a.path.localeCompare(b.path))
}
