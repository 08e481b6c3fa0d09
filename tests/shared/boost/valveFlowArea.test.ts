import { expect, test } from 'vitest'
import { valveFlowArea } from '@trochoid/compute/boost/valveFlowArea.ts'

test('two valves pass as one that is √2 larger', () => {
  expect(valveFlowArea({ diameter: 0.03, number: 2 })).toBeCloseTo(valveFlowArea({ diameter: 0.03 * Math.SQRT2, number: 1 }), 15)
})
