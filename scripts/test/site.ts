import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { obtainChromium } from '../browser/find.ts'
import { root } from '../root.ts'
import { run } from '../run.ts'
import { orFailed, type Tally } from './tally.ts'

type Report = { stats: { expected: number; unexpected: number; flaky: number } }

/** Every page of the built site, in a browser. */
export async function testSite(): Promise<Tally> {
  const chromium = obtainChromium()
  if (!chromium) {
    console.error('No Chromium could be found or brought in: install one, or name it in the environment variable CHROMIUM.')
    return { passed: 0, failed: 1 }
  }
  const report = join(root, 'reports', 'playwright.json')
  rmSync(report, { force: true })
  const env = { CHROMIUM: chromium, PLAYWRIGHT_JSON_OUTPUT_FILE: report }
  const code = await run('playwright', ['test', '--reporter=dot,json'], env)
  try {
    const { expected, unexpected, flaky } = (JSON.parse(readFileSync(report, 'utf8')) as Report).stats
    return orFailed({ passed: expected + flaky, failed: unexpected }, code)
  } catch {
    return { passed: 0, failed: 1 }
  }
}
