import { describe, expect, test } from 'vitest'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { columns, mapGrid } from '@trochoid/compute/boost/mapGrid.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import { gridAt } from '@trochoid/compute/numerics/grid.ts'
import { type CompressorMap, type SpeedLine } from '@trochoid/compute/quantity/quantity.ts'

const mapOf = (lines: readonly SpeedLine[]): CompressorMap => ({ name: 'Invented', referenceTemperature: 298.15, referencePressure: 1e5, lines })
/** Ratio whose isentropic rise is the given head: lines can then be drawn in whole numbers of head. */
const ratioOf = (head: number): number => (1 + head) ** 3.5
const line = (speed: number, flow: readonly number[], head: readonly number[], efficiency = head.map(() => 0.7)): SpeedLine => ({ speed, flow, ratio: head.map(ratioOf), efficiency })
const out = new Float64Array(3)
/** Slopes over place of a line’s flow or head at its two ends. */
const ends = (map: CompressorMap, of: 'flow' | 'head'): [number, number] => {
  const { byColumn } = mapGrid(map)[of]
  return [byColumn[0]!, byColumn[columns - 1]!]
}

test('a map is made ready once', () => {
  const map = structuredClone(mediumMap)
  expect(mapGrid(map)).toBe(mapGrid(map))
  expect(mapGrid(map)).not.toBe(mapGrid(structuredClone(mediumMap)))
})
test('sizes are those of the largest flow and head, and a low efficiency is a fifth or the map’s own least', () => {
  const of = (least: number) => mapGrid(mapOf([line(5000, [0.1, 0.2, 0.3], [0.2, 0.15, 0.1], [0.5, 0.7, least]), line(8000, [0.2, 0.35, 0.5], [0.5, 0.4, 0.3])]))
  expect(of(0.5).flowScale).toBeCloseTo(0.5, 12)
  expect(of(0.5).headScale).toBeCloseTo(0.5, 12)
  expect(of(0.5).lowEfficiency).toBe(0.2)
  expect(of(0.15).lowEfficiency).toBe(0.15)
  expect([of(0.5).lowest, of(0.5).top]).toEqual([5000, 8000])
})
test('a point’s place is its share of the length walked along the drawn line', () => {
  // Legs of 0.3 wide and 0.4 high, then 0.7 wide and 0.6 high, of a picture one wide and one high.
  const map = mapOf([line(5000, [0.1, 0.16, 0.3], [0.2, 0.16, 0.1]), line(8000, [0.3, 0.45, 0.8], [0.9, 0.7, 0.4])])
  const g = mapGrid(map)
  const place = 0.5 / (0.5 + Math.hypot(0.7, 0.6))
  for (const [speed, flow, head] of [[5000, 0.16, 0.16], [8000, 0.45, 0.7]] as const) {
    gridAt(g.flow, speed, place, out)
    expect(out[0]).toBeCloseTo(flow, 3)
    gridAt(g.head, speed, place, out)
    expect(out[0]).toBeCloseTo(head, 3)
  }
})
describe('ends that lie flat are made steep enough to lead out of the map', () => {
  const second = line(8000, [0.3, 0.45, 0.8], [0.9, 0.7, 0.4])
  test('head that lies level at choke falls there by a fifth of the line’s fall, at surge it may lie level', () => {
    const [surge, choke] = ends(mapOf([line(5000, [0.1, 0.2, 0.3], [0.3, 0.1, 0.1]), second]), 'head')
    expect(choke).toBeCloseTo(-0.2 * 0.2, 12)
    expect(surge).toBeLessThan(0)
    expect(ends(mapOf([line(5000, [0.1, 0.2, 0.3], [0.3, 0.3, 0.1]), second]), 'head')[0]).toBe(0)
  })
  test('head that falls at choke keeps its slope', () => {
    const [, choke] = ends(mapOf([line(5000, [0.1, 0.2, 0.3], [0.3, 0.2, 0.1]), second]), 'head')
    expect(choke).toBeCloseTo(-0.2, 9)
  })
  test('flow that hardly grows at an end grows there by three of its secants, never by more than a fifth of the line', () => {
    // The last leg is all fall: half the picture’s height, a hundredth of its width.
    const steep = line(5000, [0.1, 0.298, 0.3], [0.3, 0.2, 0.1])
    const legs = [Math.hypot(0.99, 0.5), Math.hypot(0.01, 0.5)] as const
    const secant = 0.002 / (legs[1] / (legs[0] + legs[1]))
    const [surge, choke] = ends(mapOf([steep, second]), 'flow')
    expect(choke).toBeCloseTo(3 * secant, 9)
    expect(surge).toBeGreaterThan(0.2 * 0.2)
    const first = line(5000, [0.1, 0.102, 0.3], [0.3, 0.2, 0.1])
    expect(ends(mapOf([first, second]), 'flow')[0]).toBeCloseTo(3 * secant, 9)
    // Here three secants would be more than a fifth of the line.
    const bent = line(5000, [0.1, 0.27, 0.3], [0.3, 0.2, 0.1])
    const bentChoke = ends(mapOf([bent, second]), 'flow')[1]
    expect(bentChoke).toBeGreaterThanOrEqual(0.2 * 0.2 - 1e-12)
    expect(bentChoke).toBeLessThan(0.2)
  })
})
test('efficiency bends off without a step or a kink', () => {
  const map = structuredClone(mediumMap)
  const e = Array.from({ length: 300 }, (_, i) => compressorAt({ map, flow: 0.45 + i * 0.005, ratio: 1.2 }).efficiency)
  expect(Math.max(...e)).toBeGreaterThan(0.25)
  expect(Math.min(...e)).toBeLessThan(0.15)
  for (let i = 1; i < e.length - 1; i++) expect(Math.abs(e[i + 1]! - 2 * e[i]! + e[i - 1]!)).toBeLessThan(5e-4)
})
test('between two lines the surge line runs between their ends, and divides what is outside from what is inside', () => {
  const map = structuredClone(mediumMap)
  const lines = map.lines
  for (let i = 0; i < lines.length - 1; i++) for (const u of [0.25, 0.5, 0.8]) {
    const [a, b] = [lines[i]!, lines[i + 1]!]
    const ratio = a.ratio[0]! + u * (b.ratio[0]! - a.ratio[0]!)
    const { surgeFlow } = compressorAt({ map, flow: b.flow[1]!, ratio })
    expect(surgeFlow).toBeGreaterThan(a.flow[0]!)
    expect(surgeFlow).toBeLessThan(b.flow[0]!)
    expect(compressorAt({ map, flow: surgeFlow * 0.995, ratio }).outside).toBe(1)
    expect(compressorAt({ map, flow: surgeFlow * 1.005, ratio }).outside).toBe(0)
  }
  const top = lines.at(-1)!
  expect(compressorAt({ map, flow: 0.3, ratio: top.ratio[0]! * 1.05 }).surgeFlow).toBeGreaterThan(top.flow[0]!)
})
