// Changes the computation package line by line and sees whether a test notices: `npm run mutate`,
// or for one part `npm run mutate -- --mutate 'shared/fuel/**/*.ts'`.

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  packageManager: 'npm',
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  // Many tests gather the package from its files and import none of it by name, so all of them count as related.
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  mutate: [
    'shared/**/*.ts',
    // Data and declarations have no behaviour to break; the commands are tested from outside.
    '!shared/data/**',
    '!shared/checks/**',
    '!shared/cli/**',
    '!shared/registry.ts',
    '!shared/**/quantities.ts',
    '!shared/**/fields.ts',
    '!shared/**/sources.ts',
    '!shared/**/words.ts',
  ],
  // Words for readers are reviewed by reading: only what is computed is changed.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 20_000,
  thresholds: { high: 90, low: 80, break: 80 },
  reporters: ['clear-text', 'progress', 'html', 'json'],
  htmlReporter: { fileName: 'reports/mutation/index.html' },
  jsonReporter: { fileName: 'reports/mutation/report.json' },
  clearTextReporter: { allowEmojis: false, logTests: false },
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', '.astro', '.cache', 'screens', 'reports', 'content', 'public', 'tests/site', 'test-results'],
  allowConsoleColors: false,
}
