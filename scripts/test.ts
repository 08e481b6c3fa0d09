// All tests, from the types to the built site in a browser: what `npm test` does once the packages are there.

import { buildAll } from './build/all.ts'
import { run } from './run.ts'
import { testNumbers } from './test/numbers.ts'
import { testSite } from './test/site.ts'
import { sum, whole, type Tally } from './test/tally.ts'

const outcomes: { stage: string; tally: Tally; seconds: number }[] = []

async function stage(name: string, test: () => Promise<Tally>): Promise<Tally> {
  console.log(`\n=== ${name} ===\n`)
  const start = performance.now()
  const tally = await test().catch((error: unknown) => {
    console.error(error)
    return { passed: 0, failed: 1 }
  })
  outcomes.push({ stage: name, tally, seconds: (performance.now() - start) / 1000 })
  return tally
}

await stage('Types', async () => whole((await run('npm', ['run', '-s', 'check:types'])) === 0))
await stage('Lint', async () => whole((await run('npm', ['run', '-s', 'check:lint'])) === 0))
await stage('Numbers and content', testNumbers)
const built = await stage('Build', async () => whole(await buildAll().then(() => true)))
if (built.failed === 0) await stage('Site in a browser', testSite)

console.log('\n=== Outcome ===\n')
for (const { stage: name, tally, seconds } of outcomes) {
  console.log(`${name.padEnd(20)} ${String(tally.passed).padStart(5)} passed ${String(tally.failed).padStart(4)} failed ${seconds.toFixed(0).padStart(5)} s`)
}
const { passed, failed } = sum(outcomes.map(({ tally }) => tally))
console.log(`\n${passed} passed, ${failed} failed`)
process.exitCode = failed === 0 ? 0 : 1
