import fc from 'fast-check'
import { expect, test } from 'vitest'
import { arrivalOver } from '@trochoid/compute/fuel/arrivalOver.ts'

const dry = { part: 0.35, late: 0, held: 0, turn: 0.017, wall: 0, settling: 0, farWall: 0, farSettling: 0, fed: 0 }
const wet = { ...dry, late: 1.4, wall: 0.25, settling: 0.25, farWall: 0.5, farSettling: 0.6 }

test('without a way and without walls what is injected arrives', () => {
  const { least, most } = arrivalOver(dry)
  expect(least).toBeCloseTo(0, 12)
  expect(most).toBeCloseTo(0, 12)
})
test('secondary fuel on its way is missing until the primaries hold on for it', () => {
  expect(arrivalOver({ ...dry, late: 2 }).least).toBeCloseTo(-0.35, 12)
  expect(arrivalOver({ ...dry, late: 2, held: 2 }).least).toBeCloseTo(0, 12)
  expect(arrivalOver({ ...dry, late: 2, held: 3 }).most).toBeCloseTo(0.35, 12)
})
test('held on for the way and with the walls fed, the mixture arrives without a step, whatever the part that goes over', () => {
  fc.assert(fc.property(fc.double({ min: 0.05, max: 0.7, noNaN: true }), fc.double({ min: 0, max: 6, noNaN: true }), fc.double({ min: 0.006, max: 0.05, noNaN: true }), (part, late, turn) => {
    const { least, most } = arrivalOver({ ...wet, part, late, held: late, turn, fed: 1 })
    expect(least).toBeGreaterThan(-0.005)
    expect(most).toBeLessThan(0.005)
  }))
})
test('walls that are not fed take their share of the secondaries’ first shot', () => {
  const plain = arrivalOver({ ...wet, wall: 0, settling: 0, late: 0 }).least
  expect(plain).toBeCloseTo(-0.35 * 0.5, 12)
  expect(arrivalOver({ ...wet, held: 1.4 }).least).toBeGreaterThan(arrivalOver(wet).least)
})
