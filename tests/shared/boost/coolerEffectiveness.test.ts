import { expect, test } from 'vitest'
import { coolerEffectiveness } from '@trochoid/compute/boost/coolerEffectiveness.ts'

const at = (flow: number): number => coolerEffectiveness({ flow, ratedFlow: 0.4, ratedEffectiveness: 0.72 })
test('is the rated one at the rated flow and falls with flow', () => {
  expect(at(0.4)).toBeCloseTo(0.72, 14)
  for (let flow = 0.02; flow < 1.5; flow *= 1.3) expect(at(flow * 1.3)).toBeLessThan(at(flow))
})
test('nears 1 for next to no flow and stays a share', () => {
  expect(at(0.001)).toBeGreaterThan(0.999)
  expect(at(5)).toBeGreaterThan(0)
})
test('another flow chosen as the rated one makes no difference', () => {
  expect(coolerEffectiveness({ flow: 0.15, ratedFlow: 0.25, ratedEffectiveness: at(0.25) })).toBeCloseTo(at(0.15), 12)
})
