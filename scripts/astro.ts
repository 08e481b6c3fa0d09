// Runs Astro's own command with our settings: `node scripts/astro.ts dev`.

import { run } from './run.ts'

process.exitCode = await run('astro', process.argv.slice(2))
