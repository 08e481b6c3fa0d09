import { expect, test } from 'vitest'
import { hotSideLimitOf } from '@trochoid/compute/boost/hotSideLimitOf.ts'

test('more chromium and nickel stand more heat', () => {
  const at = (material: Parameters<typeof hotSideLimitOf>[0]['material']): number => hotSideLimitOf({ material })
  expect(at('ferritic-409')).toBeLessThan(at('stainless-304'))
  expect(at('stainless-304')).toBeLessThan(at('stainless-309'))
  expect(at('stainless-309')).toBeLessThan(at('stainless-310'))
  expect(at('stainless-321')).toBe(at('stainless-347'))
})
