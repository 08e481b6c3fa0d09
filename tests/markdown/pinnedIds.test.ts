import { markdownToHtml } from 'satteri'
import { expect, it } from 'vitest'
import { pinnedIds } from '../../scripts/markdown/pinnedIds.ts'

const html = (source: string) => markdownToHtml(source, { hastPlugins: [pinnedIds] }).html.trim()

it('gives a heading the id that is pinned to it, and takes the pin out of its words', () => {
  expect(html('## Oil when it is cold [#cold-oil]')).toBe('<h2 id="cold-oil">Oil when it is cold</h2>')
  expect(html('### *Cold* oil [#cold-oil]')).toBe('<h3 id="cold-oil"><em>Cold</em> oil</h3>')
})

it('leaves a heading alone that has none, and brackets that are no pin', () => {
  expect(html('## Cold oil')).toBe('<h2>Cold oil</h2>')
  expect(html('## Cold [oil] here')).toBe('<h2>Cold [oil] here</h2>')
})
