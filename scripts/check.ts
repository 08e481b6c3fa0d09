// Types, then lint with the rule of dependence: what needs no test to run.

import { run } from './run.ts'

const types = await run('npm', ['run', '-s', 'check:types'])
const lint = await run('npm', ['run', '-s', 'check:lint'])
process.exitCode = types === 0 && lint === 0 ? 0 : 1
