import { outDir } from '../../scripts/root.ts'
import { brokenLinks } from './links.ts'
import { expect, test } from './site.ts'

test('every link of every page leads somewhere', () => {
  expect(brokenLinks(outDir, '/')).toEqual([])
})
