import { Linter } from 'eslint'
import { expect, it } from 'vitest'
import { dependence } from '../../eslint/dependence.js'

const linter = new Linter({ cwd: '/project' })

/** Which rules speak against a file of the project. */
function rulesBroken(filename: string, code: string): (string | null)[] {
  const config: Linter.Config = {
    files: ['**/*.ts'],
    plugins: { project: { rules: { dependence } } },
    rules: { 'project/dependence': 'error' },
  }
  return linter.verify(code, config, { filename: `/project/${filename}` }).map(({ ruleId }) => ruleId)
}

it.each([
  ['a page using an article part', 'src/pages/margins.ts', "import '../article/Live.ts'"],
  ['a page using a layout', 'src/pages/articles/one.ts', "import '../../layouts/Base.ts'"],
  ['an island using the state', 'src/islands/calculator/field.ts', "import { builds } from '../../state/builds.ts'"],
  ['an island using the computation', 'src/islands/field.ts', "import '@trochoid/compute/fuel/injectorDuty.ts'"],
  ['an island writing a link', 'src/islands/field.ts', "import { url } from '../url.ts'"],
  ['a formula using another', 'shared/fuel/one.ts', "import { root } from '../numerics/root.ts'"],
  ['the command line using Node', 'shared/cli/calc.ts', "import 'node:process'"],
  ['a test using what it tests', 'tests/islands/field.ts', "import '../../src/islands/field.ts'"],
])('lets %s pass', (_what, filename, code) => {
  expect(rulesBroken(filename, code)).toEqual([])
})

it.each([
  ['the state using an island', 'src/state/builds.ts', "import '../islands/field.ts'"],
  ['an island using an article part', 'src/islands/field.ts', "export * from '../article/Live.ts'"],
  ['an island loading a page late', 'src/islands/field.ts', "const page = () => import('../pages/margins.ts')"],
  ['an article part using a layout', 'src/article/Live.ts', "export { name } from '../layouts/Base.ts'"],
  ['a formula using the state', 'shared/fuel/one.ts', "import '../../src/state/builds.ts'"],
  ['a formula using a page library', 'shared/fuel/one.ts', "import { h } from 'preact'"],
  ['a formula using Node', 'shared/fuel/one.ts', "import 'node:fs'"],
  ['a page going round the package name', 'src/pages/margins.ts', "import '../../shared/fuel/one.ts'"],
  ['a folder nobody placed', 'src/helpers/one.ts', "import '../state/builds.ts'"],
])('reports %s', (_what, filename, code) => {
  expect(rulesBroken(filename, code)).toEqual(['project/dependence'])
})
