import { expect, test } from 'vitest'
import { type Chance } from '@trochoid/compute/uncertainty/chances.ts'
import { packed, unpacked } from '../../src/islands/chance/packed.ts'

test('a chance travels in a page to four figures, and ends that are no number arrive as they left', () => {
  const chance = { id: 'x', left: null, mean: NaN, interval: [-Infinity, 1.23456], enough: { share: 0.123456, low: 0, high: 1 } } as unknown as Chance
  expect(unpacked(JSON.parse(JSON.stringify(packed(chance))) as Chance)).toMatchObject({ id: 'x', left: null, mean: NaN, interval: [-Infinity, 1.235], enough: { share: 0.1235, low: 0, high: 1 } })
})
