import { expect, test } from 'vitest'
import { differing } from '@trochoid/compute/build/differing.ts'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'
import { track } from '@trochoid/compute/data/builds/track.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'

const paths = (a: Parameters<typeof differing>[0], b: Parameters<typeof differing>[1]) => differing(a, b, allFields).map((d) => d.field.path)

test('a build does not differ from itself, nor by saying what it would be anyway', () => {
  expect(differing(track, track, allFields)).toEqual([])
  expect(paths(emptySheet(), setEntry(emptySheet(), 'engine.veCurve', { value: allFields.get('engine.veCurve')!.start, from: 'guess' }))).toEqual([])
})
test('what a link rounded off is no difference, nor is the name of a map', () => {
  expect(paths(setEntry(emptySheet(), 'engine.compressionRatio', { value: 9.1 }), setEntry(emptySheet(), 'engine.compressionRatio', { value: 9.1 * (1 + 1e-14) }))).toEqual([])
  const map = (name: string) => setEntry(emptySheet(), 'boost.compressorMap', { value: { ...smallMap, name } })
  expect(paths(map('a'), map('b'))).toEqual([])
})
test('both sides are told, the same either way round', () => {
  const [there, back] = [differing(street, track, allFields), differing(track, street, allFields)]
  expect(there.length).toBeGreaterThan(10)
  expect(back.map((d) => [d.field.path, d.here, d.there]).sort()).toEqual(there.map((d) => [d.field.path, d.there, d.here]).sort())
})
test('what is not known comes before any number, and a larger step before a smaller', () => {
  const a = setEntry(setEntry(setEntry(emptySheet(), 'engine.compressionRatio', { value: 9 }), 'engine.speedLimit', { value: 800 }), 'oil.hotPressure', { value: 4e5 })
  const b = setEntry(setEntry(setEntry(emptySheet(), 'engine.compressionRatio', { value: 9.1 }), 'engine.speedLimit', { value: 1000 }), 'oil.hotPressure', { value: null })
  expect(paths(a, b)).toEqual(['oil.hotPressure', 'engine.speedLimit', 'engine.compressionRatio'])
})
