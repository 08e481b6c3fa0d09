import { defineConfig } from 'vitest/config'
import base from './vitest.config.ts'
import { keepThread } from './tests/mutation/keptThread.ts'

const part = process.env['PART']
const hasFormulas = part !== undefined && !['calculation', 'formula', 'numerics', 'quantity'].includes(part)

/**
 * Only the tests that judge formulas and numerics by themselves: what is changed under mutation is judged by those alone, in one
 * thread that is kept from mutant to mutant. Sweeps over calculations and whole builds would notice much, but slowly and without saying what.
 */
export default defineConfig({
  ...base,
  plugins: [keepThread],
  test: {
    ...base.test,
    include: part ? [`tests/shared/${part}/*.test.ts`, 'tests/shared/generated/*.test.ts'] : ['tests/shared/**/*.test.ts'],
    exclude: ['tests/shared/build/**', 'tests/shared/generated/calculations.test.ts', 'tests/shared/generated/words.test.ts'],
    // Read by the generated test of equations: a folder's formulas are judged without describing those of all others.
    env: hasFormulas ? { FOLDER: part } : {},
    setupFiles: ['tests/mutation/setup.ts'],
  },
})
