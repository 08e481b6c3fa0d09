import { expect, test } from 'vitest'
import { type Point } from '@trochoid/compute/build/point.ts'
import { margins } from '@trochoid/compute/build/everything.ts'
import { phrases } from '@trochoid/compute/comparison/phrases.ts'
import { sharedSpeeds, valueAtSpeed } from '@trochoid/compute/comparison/traits.ts'

const points = (...of: readonly (readonly [number, number | undefined])[]): readonly Point[] => of.map(([speed, value]) => ({ speed, kind: 'full', values: value === undefined ? {} : { x: value }, missing: {}, failed: {}, residuals: {} }) as unknown as Point)

test('a value between two speeds lies on the straight line, and there is none beside a gap or beyond the ends', () => {
  const p = points([100, 1], [200, 3], [300, undefined], [400, 5])
  expect([100, 150, 200, 250, 300, 350, 400, 450, 50].map((s) => valueAtSpeed(p, 'x', s))).toEqual([1, 2, 3, null, null, null, 5, null, null])
})
test('two sweeps of the same speeds keep them; others are laid over the whole width of both', () => {
  const a = points([100, 1], [200, 1], [300, 1])
  expect(sharedSpeeds(a, points([100, 2], [200, 2], [300, 2]))).toEqual([100, 200, 300])
  expect(sharedSpeeds(a, points([50, 2], [200, 2], [450, 2]))).toEqual([50, 250, 450])
  expect(sharedSpeeds([], [])).toEqual([])
})
test('every phrase belongs to a link', () => {
  const ids = new Set(margins.map((m) => m.id))
  expect(Object.keys(phrases).filter((id) => !ids.has(id))).toEqual([])
})
