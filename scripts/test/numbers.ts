import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../root.ts'
import { run } from '../run.ts'
import { orFailed, type Tally } from './tally.ts'

type File = { status: string; assertionResults: { status: string }[] }
type Report = { numPassedTests: number; numFailedTests: number; testResults: File[] }

/** A file that broke before any of its tests could fail. */
const broke = ({ status, assertionResults }: File) =>
  status === 'failed' && assertionResults.every((test) => test.status !== 'failed')

/** Formulas, checks, content: everything that needs no browser. */
export async function testNumbers(): Promise<Tally> {
  const report = join(root, 'reports', 'vitest.json')
  rmSync(report, { force: true })
  const code = await run('vitest', ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`])
  try {
    const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report
    return orFailed({ passed: numPassedTests, failed: numFailedTests + testResults.filter(broke).length }, code)
  } catch {
    return { passed: 0, failed: 1 }
  }
}
