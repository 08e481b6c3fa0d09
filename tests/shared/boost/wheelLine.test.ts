import { expect, test } from 'vitest'
import { readMap } from '@trochoid/compute/calculation/inputs.ts'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { genericMap } from '@trochoid/compute/boost/genericMap.ts'
import { wheelLine } from '@trochoid/compute/boost/wheelLine.ts'
import { inventedMaps } from '@trochoid/compute/data/maps/index.ts'

const line = { exducer: 0.077, speed: 11000, temperature: 298.15, surge: 0.2, right: 0.45 }
const at = (place: number, more = {}) => wheelLine({ ...line, ...more, place })

test('ratio falls along a line, ever more steeply, and rises with speed', () => {
  const ratios = [0, 0.2, 0.4, 0.6, 0.8, 1].map((place) => at(place).ratio)
  ratios.slice(1).forEach((r, i) => expect(r).toBeLessThan(ratios[i]!))
  for (let i = 1; i < 5; i++) expect(ratios[i]! - ratios[i + 1]!).toBeGreaterThan(ratios[i - 1]! - ratios[i]!)
  expect(at(0.3, { speed: 12000 }).ratio).toBeGreaterThan(at(0.3).ratio)
})
test('at surge and at the right edge the head parameter is what was assumed', () => {
  const tip = (11000 * 0.077) / 2
  const psi = (ratio: number): number => (1005 * 298.15 * (ratio ** (0.4 / 1.4) - 1)) / (tip ** 2 / 2)
  expect(psi(at(0).ratio)).toBeCloseTo(1.08, 9)
  expect(psi(at(1).ratio)).toBeCloseTo(0.36, 9)
})
test('efficiency is best at two fifths, and better in a larger wheel at the same tip speed', () => {
  for (const place of [0, 0.2, 0.6, 1]) expect(at(place).efficiency).toBeLessThan(at(0.4).efficiency)
  expect(at(0.4).efficiency - at(1).efficiency).toBeCloseTo(0.18, 9)
  expect(at(0.4, { exducer: 0.154, speed: 5500 }).efficiency).toBeGreaterThan(at(0.4).efficiency)
})
test.each([[40, 52], [49, 66], [58, 77], [67, 88], [80, 108]])('a wheel of %i and %i mm makes a map that is accepted and can be read', (inducer, exducer) => {
  const map = genericMap({ name: 'Estimated', inducer: inducer / 1000, exducer: exducer / 1000, topTipSpeed: 500 })
  expect(readMap(map, 'map')).toMatchObject({ ok: true })
  expect(map.estimate).toBe(true)
  const middle = map.lines[4]!
  expect(compressorAt({ map, flow: middle.flow[3]!, ratio: middle.ratio[3]! })).toMatchObject({ outside: 0, estimated: 0 })
})
test('every map that comes with the handbook is accepted, says that it is invented, and is an estimate', () => {
  for (const map of Object.values(inventedMaps)) {
    expect(readMap(map, 'map')).toMatchObject({ ok: true })
    expect(map.name).toMatch(/^Invented/)
    expect(map.estimate).toBe(true)
  }
})
