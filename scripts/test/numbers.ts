import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../root.ts'
import { run } from '../run.ts'
import { orFailed, type Tally } from './tally.ts'

type Report = { numPassedTests: number; numFailedTests: number }

/** Formulas, checks, content: everything that needs no browser. */
export async function testNumbers(): Promise<Tally> {
  const report = join(root, 'reports', 'vitest.json')
  rmSync(report, { force: true })
  const code = await run('vitest', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`])
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8')) as Report
    return orFailed({ passed: numPassedTests, failed: numFailedTests }, code)
  } catch {
    return { passed: 0, failed: 1 }
  }
}
