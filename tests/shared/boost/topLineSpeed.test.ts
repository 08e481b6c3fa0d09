import { expect, test } from 'vitest'
import { topLineSpeed } from '@trochoid/compute/boost/topLineSpeed.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'

test('is that of the last line', () => {
  expect(topLineSpeed({ map: mediumMap })).toBe(mediumMap.lines.at(-1)!.speed)
  expect(topLineSpeed({ map: { ...mediumMap, lines: mediumMap.lines.slice(0, 3) } })).toBe(mediumMap.lines[2]!.speed)
})
