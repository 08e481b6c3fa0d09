import astro from 'eslint-plugin-astro'
import tseslint from 'typescript-eslint'
import { dependence } from './eslint/dependence.js'

const project = { rules: { dependence } }

export default tseslint.config(
  { ignores: ['dist', '.astro', '.cache', 'node_modules', 'reports', 'screens', '.stryker-tmp', 'test-results', 'playwright-report'] },
  ...tseslint.configs.strict,
  ...astro.configs.recommended,
  {
    plugins: { project },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'project/dependence': 'error',
      'eqeqeq': ['error', 'always', { null: 'ignore' }],
      'no-var': 'error',
      'prefer-const': 'error',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-console': 'off',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports', prefer: 'type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true }],
      // An index known to be within its table reads better with a mark than with a test that cannot fail.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-invalid-void-type': 'off',
    },
  },
  {
    files: ['src/**/*.{ts,tsx,astro}', 'shared/**/*.ts'],
    rules: {
      // HTML from data is how a link or a file could run script in a page.
      'no-restricted-syntax': [
        'error',
        { selector: "JSXAttribute[name.name='dangerouslySetInnerHTML']", message: 'No HTML from data.' },
        { selector: "AssignmentExpression[left.property.name=/^(inner|outer)HTML$/]", message: 'No HTML from data.' },
        { selector: "CallExpression[callee.property.name=/^(insertAdjacentHTML|setHTMLUnsafe)$/]", message: 'No HTML from data.' },
        { selector: "CallExpression[callee.object.name='document'][callee.property.name='write']", message: 'No HTML from data.' },
        { selector: "JSXAttribute[name.name='style']", message: 'The content security policy refuses style attributes: use a class or an SVG attribute.' },
      ],
    },
  },
  {
    // Formulas run in pages, workers and headless; what they print is decided by who calls them.
    files: ['shared/**/*.ts'],
    ignores: ['shared/cli/**'],
    rules: { 'no-console': 'error' },
  },
)
