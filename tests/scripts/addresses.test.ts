import { expect, it } from 'vitest'
import { addressesOf, leadsOn, lost, moved, published } from '../../scripts/build/addresses.ts'

it('a published address is kept, or leads on to one that is', () => {
  const now = new Set(['margins/', 'articles/new/'])
  expect(lost(['margins/'], now, {})).toEqual([])
  expect(lost(['articles/old/'], now, {})).toEqual(['articles/old/'])
  expect(lost(['articles/old/'], now, { 'articles/old/': 'articles/new/#part' })).toEqual([])
  expect(lost(['articles/old/'], now, { 'articles/old/': 'articles/gone/' })).toEqual(['articles/old/'])
})

it('a heading of an article keeps its published id as long as its page is there', () => {
  const page = (path: string, kind: string) => ({ path, kind, live: false, html: '<h1>A</h1><h2 id="why">Why</h2><h3 id="how" class="x">How</h3>' })
  const now = new Set(addressesOf([page('articles/a/', 'article'), page('margins/', 'margins')]))
  expect([...now]).toEqual(['articles/a/', 'articles/a/#why', 'articles/a/#how', 'margins/'])
  expect(lost(['articles/a/#why', 'articles/a/#gone'], now, {})).toEqual(['articles/a/#gone'])
  expect(lost(['articles/old/#why'], now, { 'articles/old/': 'articles/a/' })).toEqual([])
})

it('a page that has moved says where, with and without scripts, and carries the whole policy', () => {
  const html = leadsOn('/articles/new/')
  expect(html).toContain('<link rel="canonical" href="/articles/new/">')
  expect(html).toContain('url=/articles/new/')
  expect(html).toContain("script-src 'self'")
})

it('lists published addresses, none of them twice', () => {
  expect(published().length).toBeGreaterThan(100)
  expect(new Set(published()).size).toBe(published().length)
  for (const from of Object.keys(moved())) expect(published()).toContain(from)
})
