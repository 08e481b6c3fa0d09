import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: ['tests/site/**', 'node_modules/**'],
    environment: 'node',
    // A property that fails must print its seed and counterexample in full.
    chaiConfig: { truncateThreshold: 0 },
  },
})
