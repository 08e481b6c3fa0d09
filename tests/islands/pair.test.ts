import { expect, test } from 'vitest'
import { pairAddress, pairIn } from '../../src/islands/compare/pair.ts'

test('an address gives back the pair that made it', () => {
  const pair = { first: 'mfx3k2abc', second: 'demo:track' }
  expect(pairIn(`https://x.test/compare/${pairAddress(pair)}`, 'demo:street')).toEqual(pair)
})
test('what the address leaves out is the build that is shown, with another beside it', () => {
  expect(pairIn('', 'mfx3k2')).toEqual({ first: 'mfx3k2', second: 'demo:track' })
  expect(pairIn('#first=demo:track', 'mfx3k2')).toEqual({ first: 'demo:track', second: 'demo:street' })
})
test('names that no build can have are left aside, and a build of this page alone has no address', () => {
  for (const bad of ['#first=a%3Ab', '#first=demo:<b>', `#first=${'x'.repeat(300)}`, '#first', '#%E0%A4%A']) expect(pairIn(bad, 'demo:street').first).toBe('demo:street')
  expect(pairAddress({ first: 'demo:street', second: 'brought:1' })).toBe('')
})
