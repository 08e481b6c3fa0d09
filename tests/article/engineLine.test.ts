import { describe, expect, test } from 'vitest'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import { byTrust, engineLine, nearest, type OnMap } from '../../src/article/figures/plot/engineLine.ts'
import { drawn } from '../../src/article/figures/plot/mapLines.ts'

const at = (speed: number, estimated: boolean): OnMap => ({ speed, flow: speed / 1000, ratio: 1 + speed / 1000, estimated })
const point = (speed: number, values: Record<string, number>) => ({ speed, kind: 'full' as const, values, missing: {}, failed: {}, residuals: {} })

describe('the engine’s line', () => {
  test('leaves out points that have no place on a map', () => {
    const full = { 'boost.correctedFlow': 0.1, 'boost.pressureRatio': 1.5, 'boost.overLowestLine': 0.8 }
    expect(engineLine([point(100, full), point(200, {}), point(300, { ...full, 'boost.pressureRatio': 0.9 })])).toEqual([{ speed: 100, flow: 0.1, ratio: 1.5, estimated: true }])
  })
  test('meets where the measured lines begin', () => {
    const { known, estimated } = byTrust([at(1, true), at(2, true), at(3, false), at(4, false)])
    expect(known.map((p) => p.speed)).toEqual([3, 4])
    expect(estimated.map((p) => p.speed)).toEqual([1, 2, 3])
  })
  test('is all estimate where no point reaches the lowest line, and none where every point does', () => {
    expect(byTrust([at(1, true)])).toEqual({ known: [], estimated: [at(1, true)] })
    expect(byTrust([at(1, false), at(2, false)]).known).toHaveLength(2)
  })
  test('finds the point whose speed lies nearest', () => {
    expect(nearest([at(1, false), at(4, false), at(9, false)], 6)?.speed).toBe(4)
    expect(nearest([], 6)).toBeUndefined()
  })
})

describe('a map as it is drawn', () => {
  const map = drawn(mediumMap, [0.7])
  test('its lines begin on surge, end on the right edge, and never rise to the right', () => {
    map.lines.forEach((line, i) => {
      expect(line[0]).toEqual(map.surge[i])
      expect(line.at(-1)![0]).toBeCloseTo(map.right[i]![0], 9)
      expect(line.at(-1)![1]).toBeCloseTo(map.right[i]![1], 9)
      for (let k = 0; k + 1 < line.length; k++) {
        expect(line[k + 1]![0]).toBeGreaterThan(line[k]![0])
        expect(line[k + 1]![1]).toBeLessThanOrEqual(line[k]![1] + 1e-12)
      }
    })
  })
  test('a place on a drawn line is read as that line’s speed', () => {
    map.lines.forEach((line, i) => {
      for (const [flow, ratio] of line.slice(1, -1)) expect(compressorAt({ map: mediumMap, flow, ratio }).speed / map.speeds[i]!).toBeCloseTo(1, 2)
    })
  })
  test('a line of equal efficiency is read as that efficiency', () => {
    expect(map.islands.length).toBeGreaterThan(0)
    for (const { level, spots } of map.islands) for (const [flow, ratio] of spots) expect(compressorAt({ map: mediumMap, flow, ratio }).efficiency).toBeCloseTo(level, 2)
  })
})
