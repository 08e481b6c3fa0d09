import { expect, test } from 'vitest'
import { bypassFlow } from '@trochoid/compute/boost/bypassFlow.ts'

test('turbine and wastegate share the exhaust', () => {
  expect(bypassFlow({ exhaustFlow: 0.36, turbineFlow: 0.36 })).toBe(0)
  expect(bypassFlow({ exhaustFlow: 0.36, turbineFlow: 0.25 }) + 0.25).toBeCloseTo(0.36, 15)
})
