import { expect, test } from 'vitest'
import { curveOf, mapOf, quantity, type CompressorMap, type Points } from '@trochoid/compute/quantity/quantity.ts'
import { curveText, mapText } from '../../src/islands/sheet/rowText.ts'
import { readRows } from '../../src/islands/sheet/readRows.ts'

const speed = quantity('Test speed', 'n', 'shaftSpeed', [50, 1200], 2)
const share = quantity('Test share', 'η', 'share', [0.3, 1.3], 0.03)
const curve = curveOf('Test curve', speed, share)
const map = mapOf('Test map')

test('a curve written as rows reads back as it was', () => {
  const points: Points = { x: [100, 500, 900], y: [0.5, 0.9, 0.8] }
  const read = readRows(curveText(points, curve, 'metric'), curve, 'metric')
  expect(read.ok).toBe(true)
  const value = (read as { value: Points }).value
  value.x.forEach((x, i) => expect(x).toBeCloseTo(points.x[i]!, 2))
  value.y.forEach((y, i) => expect(y).toBeCloseTo(points.y[i]!, 6))
})
test.each([
  ['1000; 50', 'two or more'], ['1000; 50\n1000; 60', 'same'], ['2000; 50\n1000; 60', 'not in order'], ['1000 50 7\n2000 60 8', '3 numbers'], ['one; two', 'not numbers'], ['<b>1</b>', 'not numbers'],
])('rows %j are refused with their reason', (text, why) => {
  const read = readRows(text, curve, 'metric')
  expect(read.ok).toBe(false)
  expect((read as { says: string }).says).toContain(why)
})
test('a map written as rows reads back, and must state what it refers to', () => {
  const given: CompressorMap = {
    name: 'x', referenceTemperature: 298.15, referencePressure: 1e5,
    lines: [{ speed: 8000, flow: [0.05, 0.1, 0.15], ratio: [1.6, 1.5, 1.2], efficiency: [0.6, 0.7, 0.6] }, { speed: 10000, flow: [0.08, 0.14, 0.2], ratio: [2.2, 2.1, 1.6], efficiency: [0.6, 0.72, 0.6] }],
  }
  const read = readRows(mapText(given), map, 'metric')
  expect(read.ok, JSON.stringify(read)).toBe(true)
  const value = (read as { value: CompressorMap }).value
  expect(value.lines).toHaveLength(2)
  expect(value.lines[1]!.flow[2]).toBeCloseTo(0.2, 6)
  expect(readRows('8000; 50; 1.5; 60', map, 'metric').ok).toBe(false)
})
