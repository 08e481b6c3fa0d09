import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  resolve: {
    // By folder rather than through node_modules, so that a copy of the tree under mutation tests its own copy of the package.
    alias: [{ find: /^@trochoid\/compute/, replacement: fileURLToPath(new URL('./shared', import.meta.url)) }],
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/site/**', 'node_modules/**'],
    environment: 'node',
    // A property that fails must print its counterexample in full.
    chaiConfig: { truncateThreshold: 0 },
  },
})
