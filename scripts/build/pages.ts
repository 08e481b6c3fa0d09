import { run } from '../run.ts'

/** Writes every page of the site, from `src/` and `content/`. */
export async function buildPages(): Promise<void> {
  const code = await run('astro', ['build'])
  if (code !== 0) throw new Error('The pages could not be built.')
}
