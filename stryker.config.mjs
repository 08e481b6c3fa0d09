// Changes the formulas and the numerics line by line and sees whether a test notices: `npm run mutate`,
// or for one folder `PART=fuel npm run mutate`. On a machine that others use too, add `-- --concurrency 1`.

const part = process.env['PART'] ?? '**'
const report = `reports/mutation/${part === '**' ? 'all' : part}`

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  packageManager: 'npm',
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  // Many tests gather the package from its files and import none of it by name, so all of them count as related.
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  mutate: [
    `shared/${part}/*.ts`,
    // Data and declarations have no behaviour to break; the commands are tested from outside.
    '!shared/data/**',
    '!shared/checks/**',
    '!shared/cli/**',
    '!shared/build/**',
    '!shared/registry.ts',
    '!shared/**/{quantities,fields,sources,words,point}.ts',
    // Calculations and margins only put formulas together; generated tests hold them to that.
    '!shared/**/*.{calc,margin}.ts',
  ],
  // Words for readers are reviewed by reading: only what is computed is changed.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 6_000,
  thresholds: { high: 90, low: 80, break: 80 },
  reporters: ['clear-text', 'progress', 'html', 'json'],
  htmlReporter: { fileName: `${report}.html` },
  jsonReporter: { fileName: `${report}.json` },
  clearTextReporter: { allowEmojis: false, logTests: false, reportTests: false },
  tempDirName: '.stryker-tmp',
  ignorePatterns: ['dist', '.astro', '.cache', 'screens', 'reports', 'content', 'public', 'src', 'scripts', 'tests/site', 'tests/content', 'tests/scripts', 'test-results'],
  allowConsoleColors: false,
}
