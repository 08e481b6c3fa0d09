import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { squeezed } from '@trochoid/compute/link/squeeze.ts'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { linkText, noteText, reserved, tablesText } from '../../src/islands/calculator/link.ts'
import { start } from '../../src/islands/calculator/model.ts'
import { readLink } from '../../src/islands/calculator/readLink.ts'

const { calculations } = await loadRegistry()
const duty = calculations.get('injector-duty')!
const onMap = [...calculations.values()].find((of) => Object.values(of.in).some(({ shape }) => shape.kind === 'map'))!
const mapName = Object.keys(onMap.in).find((name) => onMap.in[name]!.shape.kind === 'map')!
const first = Object.keys(duty.in)[0]!
const packed = (text: string) => squeezed(new TextEncoder().encode(text))

describe('a calculator sent as a link', () => {
  test.each([...calculations.values()].map((of) => [of.id, of] as const))('%s arrives with every given', async (_, of) => {
    const state = start(of, startValues(of), 'metric')
    const text = `#${linkText(state)}${await tablesText(state)}${noteText('Look & tell me')}`
    const read = (await readLink(of, text))!
    expect(read.faults).toEqual([])
    expect(read.note).toBe('Look & tell me')
    for (const [name, value] of Object.entries(state.values)) {
      if (typeof value === 'number') expect(Math.abs((read.values[name] as number) - value), name).toBeLessThanOrEqual(1e-7 * Math.abs(value) + 1e-12)
      else if (typeof value === 'object' && value !== null) expect(JSON.stringify(read.values[name]).replace(/"name":"[^"]*"/, ''), name).toBe(JSON.stringify(value).replace(/"name":"[^"]*"/, ''))
      else if (value !== null) expect(read.values[name], name).toBe(value)
    }
  })
  test('no given is called as what an address keeps for itself', () => {
    for (const of of calculations.values()) for (const name of [...Object.values(reserved), 'build']) expect(Object.keys(of.in), of.id).not.toContain(name)
  })
  test('leaves alone an address that names a place or a build', async () => expect([await readLink(duty, '#curve'), await readLink(duty, '#build=1AAAA')]).toEqual([null, null]))
  test('shows a note as plain words', async () => expect((await readLink(duty, `#note=${encodeURIComponent('a\u202eb\n<b>c</b>')}`))?.note).toBe('a b <b>c</b>'))
})

const bad: readonly (readonly [what: string, fragment: string | Promise<string>, says: RegExp])[] = [
  ['an unknown given', '#nothing=1', /no given called/],
  ['names that every object has', '#toString=1&__proto__=2&constructor=3', /no given called/],
  ['a given without a name', '#=5', /no given called/],
  ['a given twice', `#${first}=1&${first}=2`, /twice|./],
  ['a sum', `#${first}=2*3`, /no sum|number/],
  ['mathematics', `#${first}=9^9^9^9`, /./],
  ['code', `#${first}=alert(1)`, /./],
  ['HTML', `#${first}=%3Cimg src=x onerror=alert(1)%3E`, /./],
  ['a letter that is none', `#${first}=%E0%A4%A`, /./],
  ['not a number', `#${first}=NaN`, /./],
  ['an endless number', `#${first}=1e999`, /./],
  ['a huge number', `#${first}=1e300`, /./],
  ['nothing where a number is needed', `#${first}=`, /./],
  ['two meanings', `#${first}=1,234_gal`, /./],
  ['far too many letters', `#${first}=${'9'.repeat(20_000)}`, /too long/],
  ['a long number', `#${first}=${'9'.repeat(5000)}`, /characters long/],
  ['a thousand givens', `#${Array.from({ length: 1000 }, (_, i) => `x${i}=1`).join('&')}`, /no given called/],
  ['a note too long', `#note=${'x'.repeat(201)}`, /longer than 200/],
  ['damaged tables', '#more=1AAAA', /damaged/],
  ['tables of a later form', '#more=2AAAA', /newer handbook/],
  ['tables that are no JSON', packed('{"a":').then((code) => `#more=${code}`), /damaged/],
  ['tables that are a list', packed('[1,2]').then((code) => `#more=${code}`), /damaged/],
  ['tables nested without end', packed('['.repeat(60_000)).then((code) => `#more=${code}`), /damaged/],
  ['a bomb of tables', packed('0'.repeat(300_000)).then((code) => `#more=${code}`), /unfolds/],
  ['a table where a number belongs', packed(`{"${first}":{"x":[1,2],"y":[1,2]}}`).then((code) => `#more=${code}`), /number/],
  ['the prototype as a table', packed('{"__proto__":{"lines":[]}}').then((code) => `#more=${code}`), /no given called/],
]
describe.each(bad)('an address with %s', (_, fragment, says) => {
  test('is refused whole, in words, at once', async () => {
    const text = await fragment
    const from = performance.now()
    const read = (await readLink(duty, text))!
    expect(performance.now() - from).toBeLessThan(500)
    expect(read.values).toEqual({})
    expect(read.note).toBe('')
    expect(read.faults.length).toBeGreaterThan(0)
    expect(read.faults.length).toBeLessThanOrEqual(5)
    expect(read.faults.join(' ')).toMatch(says)
    expect(Object.keys(Object.prototype)).toEqual([])
  })
})
test('a map that crosses itself is refused', async () => {
  const lines = [smallMap.lines[1]!, { ...smallMap.lines[0]!, speed: smallMap.lines[1]!.speed * 1.1 }]
  expect((await readLink(onMap, `#more=${await packed(JSON.stringify({ [mapName]: { ...smallMap, lines } }))}`))?.faults.join()).toMatch(/crosses/)
})
test('a thousand spoilt addresses are each read or refused', async () => {
  const state = start(onMap, startValues(onMap), 'metric')
  const good = `#${linkText(state)}${await tablesText(state)}`
  await fc.assert(fc.asyncProperty(fc.array(fc.tuple(fc.nat(good.length - 1), fc.constantFrom(...'=&_%.<9eA\u0000')), { minLength: 1, maxLength: 5 }), async (changes) => {
    const letters = [...good]
    for (const [at, letter] of changes) letters[at] = letter
    const read = await readLink(onMap, letters.join(''))
    if (read && read.faults.length > 0) expect(read.values).toEqual({})
  }), { numRuns: 1000 })
}, 30_000)
