// Serves the site as it was last built.

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { base, outDir } from './root.ts'
import { serve } from './serve/serve.ts'

if (!existsSync(join(outDir, 'index.html'))) {
  console.error('There is no built site yet: run `npm run build` first.')
  process.exit(1)
}
const site = await serve({ dir: outDir, base, port: Number(process.env.PORT || 4300) })
console.log(`The handbook is at ${site.url}   (Ctrl+C stops it)`)
