import { expect, test } from 'vitest'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { pressureAtRatio } from '@trochoid/compute/boost/pressureAtRatio.ts'
import { recirculationFlow } from '@trochoid/compute/boost/recirculationFlow.ts'
import { surgeRatioAtSpeed } from '@trochoid/compute/boost/surgeRatioAtSpeed.ts'
import { timeToSurge } from '@trochoid/compute/boost/timeToSurge.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'

test('surge at the speed of a line is that line’s left end, and lies on the map’s own surge line', () => {
  for (const line of mediumMap.lines) {
    const { ratio, flow } = surgeRatioAtSpeed({ map: mediumMap, speed: line.speed })
    expect(ratio).toBeCloseTo(line.ratio[0]!, 6)
    expect(flow).toBeCloseTo(line.flow[0]!, 6)
  }
  const between = surgeRatioAtSpeed({ map: mediumMap, speed: 10000 })
  // The edge is drawn through points of it, so between them it differs a little.
  expect(compressorAt({ map: mediumMap, flow: between.flow, ratio: between.ratio }).surgeFlow / between.flow).toBeCloseTo(1, 3)
})
test('below the lowest line surge comes down to rest', () => {
  const low = mediumMap.lines[0]!
  const half = surgeRatioAtSpeed({ map: mediumMap, speed: low.speed / 2 })
  expect(half.flow).toBeCloseTo(low.flow[0]! / 2, 9)
  expect(surgeRatioAtSpeed({ map: mediumMap, speed: 1e-6 }).ratio).toBeCloseTo(1, 9)
})
test('an engine that takes enough leaves nothing to let past', () => {
  expect(recirculationFlow({ surge: 0.1, reserve: 0.2, engine: 0.3 })).toBe(0)
  expect(recirculationFlow({ surge: 0.1, reserve: 0.2, engine: 0.02 })).toBeCloseTo(0.1, 12)
})
test('pipes fill by the mass that enters them', () => {
  const time = timeToSurge({ volume: 0.012, from: 200e3, to: 250e3, temperature: 380, into: 0.3, leaving: 0.02 })
  expect(time * 0.28 * 287.05287 * 380).toBeCloseTo(0.012 * 50e3, 6)
  expect(timeToSurge({ volume: 0.012, from: 260e3, to: 250e3, temperature: 380, into: 0.3, leaving: 0.02 })).toBe(0)
  expect(pressureAtRatio({ inlet: 98e3, ratio: 2 })).toBe(196e3)
})
