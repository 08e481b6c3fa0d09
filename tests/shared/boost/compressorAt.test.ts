import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { readMap } from '@trochoid/compute/calculation/inputs.ts'
import { largeMap } from '@trochoid/compute/data/maps/large.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { type CompressorMap } from '@trochoid/compute/quantity/quantity.ts'

const k = 0.4 / 1.4
const ratioOf = (head: number): number => (1 + head) ** (1 / k)
const headOf = (ratio: number): number => ratio ** k - 1
const at = (map: CompressorMap, flow: number, ratio: number) => compressorAt({ map, flow, ratio })

/** Lines with unequal numbers of points that rise a little from surge, as measured maps do. */
const measured: CompressorMap = {
  name: 'Invented map with rising lines', referenceTemperature: 298.15, referencePressure: 1e5,
  lines: [
    { speed: 5000, flow: [0.03, 0.08, 0.13], ratio: [1.22, 1.23, 1.05], efficiency: [0.6, 0.7, 0.5] },
    { speed: 8000, flow: [0.06, 0.1, 0.16, 0.2, 0.22], ratio: [1.6, 1.63, 1.6, 1.45, 1.2], efficiency: [0.62, 0.71, 0.75, 0.7, 0.55] },
    { speed: 11000, flow: [0.11, 0.16, 0.22, 0.27, 0.29, 0.3], ratio: [2.3, 2.33, 2.3, 2.1, 1.8, 1.5], efficiency: [0.63, 0.7, 0.75, 0.72, 0.65, 0.55] },
    { speed: 13000, flow: [0.17, 0.25, 0.31, 0.34], ratio: [3, 2.98, 2.7, 1.9], efficiency: [0.62, 0.7, 0.68, 0.52] },
  ],
}
const maps = [['small', smallMap], ['medium', mediumMap], ['large', largeMap], ['measured', measured]] as const

describe.each(maps)('the %s map', (name, original) => {
  // A map is made ready once per object: each test reads a copy of its own, so that each also tests the making.
  let map: CompressorMap
  beforeEach(() => { map = structuredClone(original) })
  test('is accepted by the reader of maps', () => expect(readMap(map, 'map')).toMatchObject({ ok: true }))
  test('reads its own points back', () => {
    // Resampling a line at 33 places between hand-drawn points costs a little; lines of many points cost less.
    const [speedOff, efficiencyOff] = name === 'measured' ? [3e-3, 4e-3] : [1e-4, 2e-4]
    for (const line of map.lines) line.flow.forEach((flow, j) => {
      const read = at(map, flow, line.ratio[j]!)
      expect(Math.abs(read.speed / line.speed - 1)).toBeLessThan(speedOff)
      expect(Math.abs(read.efficiency - line.efficiency[j]!)).toBeLessThan(efficiencyOff)
    })
  })
  test('at the height of a line’s ends, the edges of the map are those ends', () => {
    map.lines.forEach((line) => {
      if (line.ratio[0]! >= Math.max(...line.ratio)) expect(at(map, line.flow[1]!, line.ratio[0]!).surgeFlow).toBeCloseTo(line.flow[0]!, 6)
      expect(at(map, line.flow[1]!, line.ratio.at(-1)!).chokeFlow).toBeCloseTo(line.flow.at(-1)!, 6)
    })
    const top = map.lines.at(-1)!
    // A nearly flat top makes the flow at a height more uncertain than the height at a flow.
    top.flow.slice(2, -1).forEach((flow, j) => expect(Math.abs(at(map, flow, top.ratio[j + 2]!).chokeFlow / flow - 1)).toBeLessThan(name === 'measured' ? 1e-2 : 5e-4))
  })
  test('more pressure at the same flow, or more flow at the same pressure, takes more speed', () => {
    const lines = map.lines
    fc.assert(fc.property(fc.double({ min: 0.02, max: 0.98, noNaN: true }), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (u, v) => {
      const ratio = lines[0]!.ratio[0]! + u * (lines.at(-1)!.ratio[0]! - lines[0]!.ratio[0]!)
      const { surgeFlow, chokeFlow } = at(map, 0.1, ratio)
      const flow = surgeFlow + v * (chokeFlow - surgeFlow)
      const here = at(map, flow, ratio)
      expect(here.outside).toBe(0)
      expect(at(map, flow, ratio * 1.004).speed).toBeGreaterThan(here.speed)
      if (v > 0.4) expect(at(map, flow * 1.01, ratio).speed).toBeGreaterThan(here.speed)
    }))
  })
  test('below the lowest line, half the speed is half the flow and a quarter of the head', () => {
    const line = map.lines[0]!
    line.flow.forEach((flow, j) => {
      const on = at(map, flow, line.ratio[j]!)
      const below = at(map, flow / 2, ratioOf(headOf(line.ratio[j]!) / 4))
      expect(below.estimated).toBe(1)
      expect(below.speed).toBeCloseTo(on.speed / 2, 4)
      expect(below.efficiency).toBeCloseTo(on.efficiency, 6)
      const end = j === 0 || j === line.flow.length - 1
      if (!end) expect(below.outside).toBe(0)
    })
  })
  test('comes down to rest at ratio 1 and nothing', () => {
    expect(at(map, 1e-6, 1).speed).toBeLessThan(1)
    expect(at(map, 0.001, 1.00001).speed).toBeLessThan(0.1 * map.lines[0]!.speed)
    const { surgeFlow, chokeFlow } = at(map, 0.05, 1)
    expect([surgeFlow, chokeFlow]).toEqual([0, 0])
  })
  test('below the lowest line the edges go with the root of head', () => {
    const line = map.lines[0]!
    for (const u of [0.1, 0.5, 0.9]) {
      const head = u * headOf(line.ratio.at(-1)!)
      const { surgeFlow, chokeFlow } = at(map, 0.02, ratioOf(head))
      expect(surgeFlow).toBeCloseTo(line.flow[0]! * Math.sqrt(head / headOf(line.ratio[0]!)), 8)
      expect(chokeFlow).toBeCloseTo(line.flow.at(-1)! * Math.sqrt(u), 8)
    }
  })
  test('crosses the lowest line, the surge line, the choke line and the top line without a step or a kink', () => {
    const low = map.lines[0]!
    const mid = map.lines[Math.floor(map.lines.length / 2)]!
    const top = map.lines.at(-1)!
    const sloped = (flow: number, ratio: number, df: number, dr: number): [number, number] => {
      const a = at(map, flow + df, ratio + dr).speed
      const b = at(map, flow, ratio).speed
      return [b, a - b]
    }
    for (const [flow, ratio, tip] of [[low.flow[1]!, low.ratio[1]!, 'low'], [mid.flow[0]!, mid.ratio[0]!, 'surge'], [mid.flow.at(-1)!, mid.ratio.at(-1)!, 'choke'], [top.flow[1]!, top.ratio[1]!, 'top']] as const) {
      const e = 1e-5
      const [here, forth] = sloped(flow, ratio, e, 0)
      const [, back] = sloped(flow, ratio, -e, 0)
      expect(Math.abs(forth) / here, tip).toBeLessThan(2e-3)
      expect(Math.abs(forth + back), tip).toBeLessThan(0.05 * Math.max(Math.abs(forth), 1e-3 * here * e / flow) + 2e-3)
    }
  })
  test('says on which side of the map a point lies', () => {
    const line = map.lines[2]!
    const middle = line.ratio[1]!
    const { surgeFlow, chokeFlow } = at(map, 0.1, middle)
    expect(at(map, surgeFlow * 0.9, middle).outside).toBe(1)
    expect(at(map, surgeFlow * 1.02, middle).outside).toBe(0)
    expect(at(map, chokeFlow * 0.995, middle).outside).toBe(0)
    const top = map.lines.at(-1)!
    expect(at(map, top.flow[2]!, top.ratio[2]! * 1.03).outside).toBe(3)
    expect(at(map, top.flow[2]!, top.ratio[2]! * 0.97).outside).toBe(0)
    const choked = line.ratio.at(-1)! - 0.02
    expect(at(map, line.flow.at(-1)! + 0.001, choked).outside).toBe(2)
    expect(at(map, line.flow[0]! * 0.5, ratioOf(headOf(map.lines[0]!.ratio[0]!) / 2)).outside).not.toBe(3)
  })
  test('lets a solver through anywhere: finite numbers, efficiency above zero and below one', () => {
    fc.assert(fc.property(fc.double({ min: -0.1, max: 1.5, noNaN: true }), fc.double({ min: 0.3, max: 8, noNaN: true }), (flow, ratio) => {
      const read = at(map, flow, ratio)
      for (const value of Object.values(read)) expect(Number.isFinite(value)).toBe(true)
      expect(read.efficiency).toBeGreaterThan(0)
      expect(read.efficiency).toBeLessThanOrEqual(0.95)
      expect(read.speed).toBeGreaterThan(0)
      expect([0, 1, 2, 3]).toContain(read.outside)
    }), { numRuns: 400 })
  })
})

test('speed lines never cross: points of a higher speed lie above', () => {
  const map = structuredClone(measured)
  for (let flow = 0.05; flow < 0.3; flow += 0.01) {
    let before = 0
    for (let ratio = 1.02; ratio < 3.4; ratio += 0.02) {
      const { speed, outside } = at(map, flow, ratio)
      if (outside === 2 || outside === 1) continue
      expect(speed).toBeGreaterThan(before)
      before = speed
    }
  }
})
test('between two lines the reading lies between them', () => {
  const map = structuredClone(mediumMap)
  const [low, high] = [mediumMap.lines[3]!, mediumMap.lines[4]!]
  const read = at(map, (low.flow[3]! + high.flow[3]!) / 2, (low.ratio[3]! + high.ratio[3]!) / 2)
  expect(read.speed).toBeGreaterThan(low.speed)
  expect(read.speed).toBeLessThan(high.speed)
  expect(read.efficiency).toBeCloseTo((low.efficiency[3]! + high.efficiency[3]!) / 2, 2)
  expect(read).toMatchObject({ outside: 0, estimated: 0 })
})
test('above the top line the right edge stays where the map ended and the surge line goes on', () => {
  const map = structuredClone(mediumMap)
  const top = mediumMap.lines.at(-1)!
  const a = at(map, 0.3, top.ratio[0]! + 0.2)
  const b = at(map, 0.3, top.ratio[0]! + 0.4)
  expect(a.chokeFlow).toBeCloseTo(top.flow[0]!, 6)
  expect(b.chokeFlow).toBe(a.chokeFlow)
  expect(b.surgeFlow).toBeGreaterThan(a.surgeFlow)
  expect(a.surgeFlow).toBeGreaterThan(top.flow[0]!)
})
test('a ratio below 1 reads as 1, and no flow as next to none', () => {
  expect(at(mediumMap, 0.1, 0.8)).toEqual(at(mediumMap, 0.1, 1))
  expect(at(mediumMap, -1, 1.5)).toEqual(at(mediumMap, 0, 1.5))
})
test('far beyond choke the efficiency bends off without falling to nothing', () => {
  const map = structuredClone(mediumMap)
  const near = at(map, 0.5, 1.2).efficiency
  const far = at(map, 1.2, 1.2).efficiency
  expect(near).toBeGreaterThan(far)
  expect(far).toBeGreaterThan(0.1)
})
test('an equal map in another object reads the same', () => {
  const copy = structuredClone(mediumMap)
  expect(at(copy, 0.3, 2.1)).toEqual(at(mediumMap, 0.3, 2.1))
})
test('an efficiency that would fall below a fifth bends off towards a tenth', () => {
  const map = structuredClone(mediumMap)
  const efficiencies = [0.5, 0.7, 0.9, 1.2, 1.6, 2.2].map((flow) => at(map, flow, 1.2).efficiency)
  efficiencies.slice(1).forEach((e, i) => expect(e).toBeLessThan(efficiencies[i]!))
  expect(efficiencies.at(-1)!).toBeLessThan(0.2)
  expect(efficiencies.at(-1)!).toBeGreaterThan(0.1)
})
test('lines that lie level, or that end at ratio 1, still lead on beyond their ends', () => {
  const level: CompressorMap = {
    name: 'Invented level lines', referenceTemperature: 298.15, referencePressure: 1e5,
    lines: [
      { speed: 6000, flow: [0.05, 0.1, 0.15], ratio: [1.3, 1.3, 1], efficiency: [0.6, 0.7, 0.5] },
      { speed: 9000, flow: [0.08, 0.15, 0.22], ratio: [1.8, 1.8, 1.8], efficiency: [0.6, 0.7, 0.6] },
      { speed: 12000, flow: [0.12, 0.2, 0.28], ratio: [2.6, 2.6, 2.2], efficiency: [0.6, 0.7, 0.5] },
    ],
  }
  expect(readMap(level, 'map')).toMatchObject({ ok: true })
  for (const [flow, ratio, outside] of [[0.04, 1.3, 1], [0.1, 1.3, 0], [0.21, 1.05, 2], [0.1, 1.8, 0], [0.25, 1.5, 2], [0.2, 2.9, 3]] as const) {
    const read = at(level, flow, ratio)
    for (const value of Object.values(read)) expect(Number.isFinite(value)).toBe(true)
    expect(read.outside, `${flow} ${ratio}`).toBe(outside)
  }
  expect(at(level, 0.15, 1.8).speed).toBeCloseTo(9000, 0)
})
test('a line of three points is read along a smooth curve, not along its chords', () => {
  const map = structuredClone(measured)
  const [a, b] = [map.lines[0]!.flow[1]!, map.lines[0]!.flow[2]!]
  const chord = (map.lines[0]!.ratio[1]! + map.lines[0]!.ratio[2]!) / 2
  // The line bows out above its chord on the way to choke, so that the chord's middle belongs to a lower speed.
  expect(at(map, (a + b) / 2, chord).speed).toBeLessThan(map.lines[0]!.speed)
})
