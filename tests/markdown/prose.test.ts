import { markdownToHtml } from 'satteri'
import { expect, it } from 'vitest'
import { alignByClass } from '../../scripts/markdown/alignByClass.ts'
import { linksBelowBase } from '../../scripts/markdown/linksBelowBase.ts'

const html = (source: string) => markdownToHtml(source, { hastPlugins: [alignByClass, linksBelowBase('/handbook/')] }).html

it('aligns the columns of a table without a style attribute', () => {
  const table = html('| bar | flow |\n| :-: | ---: |\n| 3 | 650 |\n')
  expect(table).not.toContain('style')
  expect(table).toContain('<td class="right">650</td>')
  expect(table).toContain('<td class="center">3</td>')
})

it('puts the base before a link into the site, and leaves others alone', () => {
  expect(html('[oil](/articles/oil/#why)')).toContain('href="/handbook/articles/oil/#why"')
  expect(html('[here](#why)')).toContain('href="#why"')
  expect(html('[there](https://example.org/)')).toContain('href="https://example.org/"')
  expect(html('[there](//example.org/)')).toContain('href="//example.org/"')
})
