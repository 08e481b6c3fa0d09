// Builds the site and serves it: what `npm start` does once the packages are there.

import { buildAll } from './build/all.ts'
import { base, outDir } from './root.ts'
import { serve } from './serve/serve.ts'

await buildAll()
const site = await serve({ dir: outDir, base, port: Number(process.env.PORT || 4300) })
console.log(`\nThe handbook is at ${site.url}   (Ctrl+C stops it)`)
