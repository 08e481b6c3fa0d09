// Runs every measurement in scripts/bench, one after the other, so that none disturbs another.

import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { root } from './root.ts'

const dir = join(root, 'scripts', 'bench')
const wanted = process.argv.slice(2)
const files = readdirSync(dir).filter((name) => name.endsWith('.ts') && (wanted.length === 0 || wanted.includes(name.slice(0, -3))))
for (const name of files.sort()) {
  console.log(`\n${name.slice(0, -3)}`)
  await import(join(dir, name))
}
