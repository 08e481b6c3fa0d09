import { expect, test } from 'vitest'
import { bypassCapacityOf } from '@trochoid/compute/fuel/bypassCapacityOf.ts'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'

const line = { bore: 7.94e-3, length: 4, fittings: 5, roughness: 1.5e-6, density: 740, viscosity: 0.26e-3 }
const regulator = { held: 3e5, fullFlow: 120e-6, fullDrop: 2e5 }

test('at the answer regulator and return use up the pressure to be held', () => {
  for (const held of [1e5, 3e5, 5e5]) {
    const flow = bypassCapacityOf({ ...regulator, held, ...line })
    expect(regulator.fullDrop * (flow / regulator.fullFlow) ** 2 + lineLossOf({ flow, ...line }).loss).toBeCloseTo(held, 2)
  }
})
test('a return that loses nothing leaves the regulator’s own flow', () => {
  expect(bypassCapacityOf({ ...regulator, ...line, length: 0, fittings: 0 })).toBeCloseTo(120e-6 * Math.sqrt(1.5), 12)
  expect(bypassCapacityOf({ ...regulator, held: 2e5, ...line, length: 0, fittings: 0 })).toBeCloseTo(120e-6, 12)
})
test('a narrow return passes less, a higher pressure more', () => {
  const now = bypassCapacityOf({ ...regulator, ...line })
  expect(bypassCapacityOf({ ...regulator, ...line, bore: 4e-3 })).toBeLessThan(now)
  expect(bypassCapacityOf({ ...regulator, held: 4e5, ...line })).toBeGreaterThan(now)
})
test('with no pressure to hold there is nothing it passes first', () => {
  expect(bypassCapacityOf({ ...regulator, held: 0, ...line })).toBe(0)
  expect(bypassCapacityOf({ ...regulator, held: -1e4, ...line })).toBe(0)
})
