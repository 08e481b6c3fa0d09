import { expect, test } from 'vitest'
import { bandOf, pathOf } from '../../src/islands/chart/path.ts'
import { scale } from '../../src/islands/chart/scale.ts'

test('a line breaks where a value is missing', () => {
  expect(pathOf([[0, 0], [1, 2], null, [3, 4], [5, 6]])).toBe('M0,0L1,2M3,4L5,6')
  expect(pathOf([null, null])).toBe('')
})
test('a band closes each unbroken run and leaves out single points', () => {
  expect(bandOf([[0, 1, 2], [1, 1, 3], null, [5, 0, 1]])).toBe('M0,1L1,1L1,3L0,2Z')
})
test('a scale and its way back agree, also downwards', () => {
  const s = scale([10, 30], [200, 0], 5)
  expect(s.at(10)).toBe(200)
  expect(s.at(30)).toBe(0)
  expect(s.back(s.at(17))).toBeCloseTo(17)
})
test('a nice scale ends on ticks that hold all values', () => {
  const s = scale([0.3, 9.7], [0, 100], 5, true)
  expect(s.ticks[0]).toBe(0)
  expect(s.ticks.at(-1)).toBe(10)
  expect(s.at(10)).toBe(100)
})
test('one value alone still has a scale', () => {
  const s = scale([4, 4], [0, 100], 5)
  expect(s.at(4)).toBeCloseTo(50)
})
