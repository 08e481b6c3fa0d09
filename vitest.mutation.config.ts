import { defineConfig } from 'vitest/config'
import base from './vitest.config.ts'

/** Only the tests of the computation package: what is changed under mutation is judged by those alone. */
export default defineConfig({ ...base, test: { ...base.test, include: ['tests/shared/**/*.test.ts'] } })
