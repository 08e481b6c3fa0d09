import { deflateRawSync, inflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { readSheet } from '@trochoid/compute/build/schema.ts'
import { emptySheet } from '@trochoid/compute/build/sheet.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { writer, type Writer } from '@trochoid/compute/link/bytes.ts'
import { buildCode, readBuildCode } from '@trochoid/compute/link/buildLink.ts'
import { mark } from '@trochoid/compute/link/mark.ts'
import { linkUnits } from '@trochoid/compute/link/numbers.ts'
import { mostUnfolded } from '@trochoid/compute/link/squeeze.ts'

const packed = (bytes: Uint8Array): string => `1${Buffer.from(deflateRawSync(bytes, { level: 9 })).toString('base64url')}`
const made = (write: (to: Writer) => void): string => { const to = writer(); write(to); return packed(to.done()) }
/** A link of one field, its head as it should be, then whatever is written. */
const one = (path: string, kind: number, write: (to: Writer) => void): string => made((to) => { head(to); to.whole(1); marked(to, path); to.byte(kind * 8); write(to) })
const head = (to: Writer, version = 1, edition = 1, note = ''): void => { to.whole(version); to.whole(edition); to.text(note) }
const marked = (to: Writer, path: string): void => { const m = mark(path); to.byte(m >> 16); to.byte((m >> 8) & 255); to.byte(m & 255) }
const double = (x: number) => (to: Writer) => { to.byte(255); to.double(x) }
const unit = (name: string, power: number, whole: number) => (to: Writer) => { to.byte(linkUnits.indexOf(name)); to.signed(power); to.signed(whole) }
const flow = 'fuel.primary.ratedFlow'
const good = await buildCode({ ...street, entries: { ...street.entries, 'boost.compressorMap': { value: smallMap } } }, allFields, 'From the workshop')

const bad: readonly (readonly [what: string, code: string, says: RegExp])[] = [
  ['nothing', '', /cut off/],
  ['its form alone', '1', /cut off/],
  ['a form before the first', `0${good.slice(1)}`, /cut off/],
  ['a later form', `2${good.slice(1)}`, /newer handbook/],
  ['no form at all', good.slice(1), /cut off/],
  ['its last letter lost', good.slice(0, -1), /cut off/],
  ['its second half lost', good.slice(0, good.length / 2), /cut off/],
  ['its first half lost', `1${good.slice(good.length / 2)}`, /cut off/],
  ['one letter changed', `${good.slice(0, 200)}${good[200] === 'A' ? 'B' : 'A'}${good.slice(201)}`, /./],
  ['a full stop caught from the sentence', `${good}.`, /cut off/],
  ['a bracket caught from the message', `${good})`, /cut off/],
  ['itself a second time', good + good.slice(1), /./],
  ['the signs of plain base64', `1${'+/'.repeat(20)}`, /cut off/],
  ['padding', `${good}==`, /cut off/],
  ['HTML', '1<img src=x onerror=alert(1)>', /cut off/],
  ['a script', '1javascript:alert(1)', /cut off/],
  ['spaces', `1${' '.repeat(100)}`, /cut off/],
  ['letters of another script', '1ΑΒΓΔ', /cut off/],
  ['a null character', '1\u0000\u0000', /cut off/],
  ['half a pair of surrogates', '1\ud800', /cut off/],
  ['words', '1this-is-not-a-build', /cut off/],
  ['more than sixteen thousand characters', `1${'A'.repeat(16_384)}`, /16384/],
  ['a million characters', `1${'A'.repeat(1_000_000)}`, /16384/],
  ['nothing squeezed', packed(new Uint8Array()), /cut off/],
  ['a bomb of zeros, two hundred bytes long', packed(new Uint8Array(200_000)), /unfolds/],
  ['a bomb of ten megabytes', packed(new Uint8Array(10_000_000)), /unfolds/],
  ['a bomb with a good beginning', packed(Uint8Array.from([...deflated(good), ...new Uint8Array(300_000)])), /unfolds/],
  ['bytes after its end', packed(Uint8Array.from([...deflated(good), 0])), /cut off/],
  ['as much as is unfolded, of ones', packed(new Uint8Array(mostUnfolded).fill(255)), /cut off/],
  ['a later build sheet', made((to) => { head(to, 2); to.whole(0) }), /newer handbook/],
  ['a build sheet of version nought', made((to) => { head(to, 0); to.whole(0) }), /never published|No build file/],
  ['an absurd version', made((to) => { head(to, 1e9); to.whole(0) }), /cut off/],
  ['a field that a later edition added', made((to) => { head(to, 1, 99); to.whole(1); marked(to, 'no.such.field'); to.byte(8); double(1)(to) }), /newer handbook/],
  ['a field that no edition has', one('no.such.field', 1, double(1)), /cut off/],
  ['the field __proto__', one('__proto__', 1, double(1)), /cut off/],
  ['the field constructor', one('constructor', 1, double(1)), /cut off/],
  ['the same field twice', made((to) => { head(to); to.whole(2); marked(to, flow); marked(to, flow); to.byte(8); to.byte(8); double(1e-5)(to); double(2e-5)(to) }), /cut off/],
  ['more fields than it holds', made((to) => { head(to); to.whole(1000) }), /cut off/],
  ['a thousand million fields', made((to) => { head(to); to.whole(1e9) }), /cut off/],
  ['a count without an end', made((to) => { head(to); for (let i = 0; i < 40; i++) to.byte(255) }), /cut off/],
  ['a kind that there is not', one(flow, 7, double(1e-5)), /cut off/],
  ['an origin that there is not', made((to) => { head(to); to.whole(1); marked(to, flow); to.byte(8 + 7); double(1e-5)(to) }), /cut off/],
  ['text where a number belongs', one(flow, 2, (to) => to.text('650')), /cut off/],
  ['a number that is none', one(flow, 1, double(NaN)), /no build can have/],
  ['an endless number', one(flow, 1, double(Infinity)), /no build can have/],
  ['a huge number', one(flow, 1, double(1e300)), /thousand times/],
  ['a negative flow', one(flow, 1, double(-1e-5)), /above zero/],
  ['a flow of nothing', one(flow, 1, double(0)), /above zero/],
  ['a power beyond all numbers', one(flow, 1, unit('cm³/min', 4000, 1)), /cut off/],
  ['a power below all numbers', one(flow, 1, unit('cm³/min', -4000, 1)), /cut off/],
  ['a unit of another kind', one(flow, 1, unit('kg', 0, 1)), /cut off/],
  ['a unit from beyond the list', one(flow, 1, (to) => { to.byte(200); to.signed(0); to.signed(1) }), /cut off/],
  ['half a rotor', one('engine.rotors', 1, double(1.5)), /whole number/],
  ['a choice that is not offered', one('engine.describedBy', 2, (to) => to.text('constructor')), /no build can have/],
  ['a choice of HTML', one('engine.describedBy', 2, (to) => to.text('<script>alert(1)</script>')), /no build can have/],
  ['a choice as long as a page', one('engine.describedBy', 2, (to) => to.text('x'.repeat(5000))), /cut off/],
  ['an oil that there is not', one('oil.grade', 3, (to) => to.text('99W-99')), /winter grade/],
  ['a curve of one point', one('engine.veCurve', 4, (to) => { to.whole(1); double(100)(to); double(0.9)(to) }), /two or more/],
  ['a curve of a million points', one('engine.veCurve', 4, (to) => { to.whole(1e6); to.byte(0) }), /cut off/],
  ['a curve that runs backwards', one('engine.veCurve', 4, (to) => { to.whole(2); to.byte(255); to.double(500); to.double(100); to.byte(255); to.double(0.9); to.double(0.8) }), /not in order/],
  ['a map of a thousand lines', one('boost.compressorMap', 5, (to) => { to.byte(0); double(298)(to); double(1e5)(to); to.whole(1000) }), /cut off/],
  ['a map without lines', one('boost.compressorMap', 5, (to) => { to.byte(0); double(298)(to); double(1e5)(to); to.whole(0); to.byte(255) }), /speed lines/],
  ['a map measured at absolute zero', one('boost.compressorMap', 5, (to) => { to.byte(0); double(0)(to); double(1e5)(to); to.whole(0); to.byte(255) }), /reference temperature/],
  ['a map that is neither measured nor estimated', one('boost.compressorMap', 5, (to) => { to.byte(9) }), /cut off/],
  ['a note of three hundred letters', made((to) => { head(to, 1, 1, 'x'.repeat(300)); to.whole(0) }), /cut off/],
  ['a note as long as a book', made((to) => { head(to, 1, 1, 'x'.repeat(60_000)); to.whole(0) }), /cut off/],
  ['a note in broken letters', made((to) => { to.whole(1); to.whole(1); to.whole(2); to.byte(0xc3); to.byte(0x28); to.whole(0) }), /cut off/],
]

test('there are at least sixty of them', () => expect(bad.length).toBeGreaterThanOrEqual(60))
describe.each(bad)('a link with %s', (_, code, says) => {
  test('is refused whole, in words, at once', async () => {
    const start = performance.now()
    const read = await readBuildCode(code, allFields)
    expect(performance.now() - start).toBeLessThan(500)
    expect(read.ok).toBe(false)
    if (!read.ok) {
      expect(read.says).toMatch(says)
      expect(read.newer).toBe(/newer handbook/.test(read.says))
      expect(read.says.length, 'words, not the link itself').toBeLessThan(400)
    }
    untouched()
  })
})

test('a bomb is left folded: reading stops at its bound', async () => {
  const before = process.memoryUsage().arrayBuffers
  // A million bytes of zeros a hundred times over would be a hundred megabytes.
  for (let i = 0; i < 100; i++) await readBuildCode(packed(new Uint8Array(1_000_000)), allFields)
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(150e6)
})

describe('ten thousand spoilt links and files', () => {
  const bytes = deflated(good)
  test('links with changed letters: each is read or refused, none throws, all in bounded time', async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat(good.length - 1), fc.constantFrom(...'ABCxyz019-_.<%')), { minLength: 1, maxLength: 4 }), async (changes) => {
      const letters = [...good]
      for (const [at, letter] of changes) letters[at] = letter
      await weighed(letters.join(''))
    }), { numRuns: 2500 })
    untouched()
  }, 60_000)
  test('links with changed bytes beneath the squeezing', async () => {
    await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 }), async (changes) => {
      const next = Uint8Array.from(bytes)
      for (const [at, byte] of changes) next[at] = byte
      await weighed(packed(next))
    }), { numRuns: 2500 })
    untouched()
  }, 60_000)
  const file = JSON.stringify({ ...street, entries: { ...street.entries, 'boost.compressorMap': { value: smallMap } } })
  test('files with changed letters', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.nat(file.length - 1), fc.constantFrom(...'{}[]",:0-9eE\\<>_ \u0000\u202e')), { minLength: 1, maxLength: 4 }), (changes) => {
      const letters = [...file]
      for (const [at, letter] of changes) letters[at] = letter
      read(letters.join(''))
    }), { numRuns: 2500 })
    untouched()
  }, 60_000)
  test('files with any JSON in the place of any of their values', () => {
    fc.assert(fc.property(fc.constantFrom(...Object.keys(street.entries), 'boost.compressorMap', 'engine.veCurve', '__proto__', 'constructor', 'x'), fc.json({ maxDepth: 4 }), (path, json) => {
      read(`{"format":"trochoid-build","version":1,"name":"","note":"","entries":{${JSON.stringify(path)}:{"value":${json}}}}`)
    }), { numRuns: 2500 })
    untouched()
  }, 60_000)

  async function weighed(code: string): Promise<void> {
    const read = await readBuildCode(code, allFields)
    // A change that leaves a sound build is a sound build: whatever was read is one that a file could have brought.
    if (read.ok) expect(readSheet(JSON.stringify(read.sheet), allFields).ok).toBe(true)
    else expect(read.says).not.toBe('The link could not be read in this browser.')
  }
  function read(json: string): void {
    const result = readSheet(json, allFields)
    if (result.ok) expect(readSheet(JSON.stringify(result.sheet), allFields)).toEqual(result)
    else expect(result.says.length).toBeGreaterThan(5)
  }
})

function deflated(code: string): Uint8Array {
  return inflateRawSync(Buffer.from(code.slice(1), 'base64url'))
}
function untouched(): void {
  expect(Object.keys(Object.prototype)).toEqual([])
  expect(({} as Record<string, unknown>)['value']).toBeUndefined()
  expect(emptySheet().entries).toEqual({})
}
