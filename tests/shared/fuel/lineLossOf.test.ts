import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'

const line = { flow: 90e-6, bore: 7.94e-3, length: 4, fittings: 8, roughness: 1.5e-6, density: 740, viscosity: 0.26e-3 }
const loss = (change: Partial<typeof line>): number => lineLossOf({ ...line, ...change }).loss

test('no flow, or flow backwards, loses nothing', () => {
  expect(lineLossOf({ ...line, flow: 0 })).toEqual({ loss: 0, speed: 0, reynolds: 0, friction: 0 })
  expect(loss({ flow: -1e-6 })).toBe(0)
})
test('without fittings the loss is in proportion to length, without length to the fittings', () => {
  expect(loss({ fittings: 0, length: 8 })).toBeCloseTo(2 * loss({ fittings: 0 }), 6)
  expect(loss({ length: 0, fittings: 16 })).toBeCloseTo(2 * loss({ length: 0 }), 6)
  expect(loss({})).toBeCloseTo(loss({ fittings: 0 }) + loss({ length: 0 }), 6)
})
test('fittings lose their coefficient times the dynamic pressure', () => {
  const { speed } = lineLossOf(line)
  expect(loss({ length: 0, fittings: 1 })).toBeCloseTo((740 * speed ** 2) / 2, 6)
})
test('laminar loss is that of Hagen and Poiseuille', () => {
  const slow = { ...line, flow: 1.2e-6, fittings: 0 }
  const exact = (128 * slow.viscosity * slow.length * slow.flow) / (Math.PI * slow.bore ** 4)
  expect(lineLossOf(slow).reynolds).toBeLessThan(1000)
  expect(lineLossOf(slow).loss / exact).toBeCloseTo(1, 4)
})
test('twice the flow in turbulent flow loses 3 to 4 times as much', () => {
  const twice = loss({ flow: 180e-6, fittings: 0 }) / loss({ fittings: 0 })
  expect(twice).toBeGreaterThan(3)
  expect(twice).toBeLessThan(4)
})
test('a wider bore loses less, a longer or rougher line more', () => {
  fc.assert(fc.property(fc.double({ min: 5e-6, max: 2e-4, noNaN: true }), fc.double({ min: 1.01, max: 2, noNaN: true }), (flow, more) => {
    expect(loss({ flow, bore: line.bore * more })).toBeLessThan(loss({ flow }))
    expect(loss({ flow, length: line.length * more })).toBeGreaterThan(loss({ flow }))
    expect(loss({ flow, roughness: 50e-6 })).toBeGreaterThanOrEqual(loss({ flow }))
  }))
})
