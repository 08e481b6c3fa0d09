import { describe, expect, test } from 'vitest'
import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { compare } from '@trochoid/compute/comparison/compare.ts'
import { type Side } from '@trochoid/compute/comparison/side.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { largeMap } from '@trochoid/compute/data/maps/large.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { ccPerMin, percent } from '@trochoid/compute/quantity/si.ts'
import { type System } from '@trochoid/compute/quantity/write.ts'

const side = (sheet: Sheet): Side => { const solved = solveBuild(sheet); return { sheet, solved, weighed: weighMargins(margins, solved, sheet) } }
const street = side(builds.street)
const other = (...changes: readonly (readonly [path: string, value: unknown])[]): Side =>
  side(changes.reduce<Sheet>((s, [path, value]) => setEntry(s, path, { ...s.entries[path], value }), { ...builds.street, name: 'The other' }))
/** The paragraph, thin spaces as common ones. */
const said = (b: Side, a = street, system: System = 'metric') => compare(a, b, allFields, system).says.join(' ').replace(/[\u202f\u2009]/g, ' ')
const part = (text: string, from: string, to = 'What it costs'): string => text.slice(text.indexOf(from), from === to ? undefined : text.indexOf(to))

describe('a larger turbine', () => {
  const text = said(other(['boost.turbineCapacity', 0.3]))
  test('is named as the one number that differs, with its two values', () => expect(text).toMatch(/^The other differs from Street build \(invented\) in one number: turbine flow capacity 300 g\/s instead of 250 g\/s \(20 % more\)\./))
  test('buys power, less back-pressure and room before surge', () => {
    const buys = part(text, 'What it buys')
    expect(buys).toMatch(/\d kW more at the top/)
    expect(buys).toMatch(/pushes against less/)
    expect(buys).toMatch(/more room before surge/)
  })
  test('costs boost later, by how much, and torque until then', () => {
    const costs = part(text, 'What it costs', 'What it costs')
    expect(costs).toMatch(/boost about \d{3} rpm later \(from 4\d{3} rpm on against 3\d{3} rpm\)/)
    expect(costs).toMatch(/up to \d+ % less torque while boost builds/)
    expect(costs).toMatch(/takes boost by the wanted speed from holding to short/)
  })
  test('says what a steady model leaves out of such a choice, and that knock is not known', () => {
    expect(text).toMatch(/spin up/)
    expect(text).toMatch(/Knock is not known/)
  })
})
test('a smaller turbine is the other way round, and is worth it out of corners', () => {
  const text = said(other(['boost.turbineCapacity', 0.2]))
  expect(part(text, 'What it buys')).toMatch(/boost about \d+ rpm earlier/)
  expect(part(text, 'What it costs', 'What it costs')).toMatch(/less room before surge.*kW less at the top/)
  expect(text).toMatch(/Worth it where pulling out of corners/)
  expect(text).not.toMatch(/lives at high speed/)
})
test('turned round, what was bought is what is lost', () => {
  const b = other(['boost.turbineCapacity', 0.22])
  expect(part(said(b), 'What it buys')).toMatch(/earlier/)
  expect(part(said(street, b), 'What it costs', 'What it costs')).toMatch(/later/)
})
test('a larger compressor leaves more room before choke and less before surge; a smaller one runs too fast', () => {
  const large = said(other(['boost.compressorMap', largeMap]))
  expect(part(large, 'What it buys')).toMatch(/\d+ % more room before choke/)
  expect(large).toMatch(/does not hang together like this: surge comes out short/)
  const small = said(other(['boost.compressorMap', smallMap]))
  expect(small).toMatch(/takes turbocharger speed from holding to short/)
  expect(part(small, 'What it buys')).toMatch(/more room before surge/)
})
test('a clutch changes nothing that the engine does: reserve alone, and what the model does not feel', () => {
  const text = said(other(['driveline.clutch.rating', 700]))
  expect(text).toMatch(/34 % more torque in hand at the clutch/)
  expect(text).toMatch(/Nothing in this model pays for it/)
  expect(text).toMatch(/What the engine does is the same: this is reserve on a link that already had its reserve/)
  expect(text).toMatch(/Pedal effort/)
  expect(said(other(['driveline.clutch.rating', 400]))).toMatch(/clutch torque from holding to short.*What helps/)
})
test('larger primaries buy duty and cost the idle pulse', () => {
  const text = said(other(['fuel.primary.ratedFlow', ccPerMin(1000)]))
  expect(part(text, 'What it buys')).toMatch(/more duty left on the primaries below hand-over/)
  expect(part(text, 'What it costs', 'What it costs')).toMatch(/less pulse at idle/)
  expect(text).toMatch(/wall film/)
})
test('a better charge cooler is told by air, power and what the rest then carries', () => {
  const text = said(other(['boost.coolerRatedEffectiveness', percent(80)]))
  expect(part(text, 'What it buys')).toMatch(/charge air \d\.\d K cooler.*kW more/)
  expect(text).toMatch(/It leaves .*coolant temperature.* tight/)
  expect(text).not.toMatch(/better match/)
})
test('against a build with faults it says what it mends', () => expect(said(street, side(builds.faulty))).toMatch(/It mends .*pump flow.*clutch torque/))
test('a number that is taken away is a link that can no longer be told', () => expect(said(other(['driveline.gearboxRating', null]))).toMatch(/gearbox can no longer be told \(it was holding\)/))
test('what moves nothing says so', () => expect(said(other(['driveline.flywheelInertia', 0.06]))).toMatch(/In this model it moves nothing\./))
test('two builds alike are alike, and a source that differs is told as that', () => {
  expect(said({ ...street, sheet: { ...builds.street, name: 'Twin' } })).toBe('Street build (invented) and Twin are the same in every number.')
  const measured = { ...street, sheet: setEntry({ ...builds.street, name: 'Twin' }, 'fuel.secondary.ratedFlow', { ...builds.street.entries['fuel.secondary.ratedFlow']!, from: 'measured' }) }
  expect(said(measured)).toMatch(/same numbers .* only in where one number came from: rated flow of a secondary/)
})
test('many differences are counted by what they belong to', () => {
  const text = said(side(builds.track))
  expect(text).toMatch(/in \d+ numbers: 1 of weather, .* of turbocharging, .* of cooling/)
  expect(text).toMatch(/later boost is felt/)
})
test('in imperial units every temperature and power is', () => {
  const text = said(side(builds.track), street, 'imperial')
  expect(text).toMatch(/hp more at the top/)
  expect(text).not.toMatch(/\d K |kW/)
})
test('a build that cannot be solved is told, not made up', () => {
  const text = said(other(['boost.turbineCapacity', null]))
  expect(text).toMatch(/can no longer be told/)
  expect(text).not.toMatch(/NaN|Infinity|undefined/)
})
describe('the tables', () => {
  const { differs, moved } = compare(street, side(builds.track), allFields)
  test('hold every field whose value or source differs, with both', () => {
    const boost = differs.find((d) => d.path === 'boost.turbineCapacity')!
    expect([boost.before.value, boost.after.value, boost.before.from, boost.after.from]).toEqual([0.25, 0.3, 'common', 'maker'])
    expect(differs.some((d) => d.path === 'fuel.primary.ratedDrop')).toBe(false)
  })
  test('hold links that came out worse first, never knock, and none that did not move', () => {
    expect(moved[0]!.turn).toBe('worse')
    expect(moved.map((m) => m.id)).not.toContain('knock')
    for (const m of moved) expect(m.turn !== 'same' || Math.abs(m.steps) >= 0.01, m.id).toBe(true)
  })
})
