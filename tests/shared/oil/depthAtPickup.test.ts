import fc from 'fast-check'
import { expect, test } from 'vitest'
import { depthAtPickup } from '@trochoid/compute/oil/depthAtPickup.ts'

const sump = { length: 0.4, width: 0.2, place: 0.25, height: 0.01 }

test('level oil stands everywhere at volume over floor', () => expect(depthAtPickup({ ...sump, volume: 0.004, tilt: 0 })).toBeCloseTo(0.05 - 0.01, 12))
test('in the middle of a covered floor tilt changes nothing; towards the far wall it takes oil away', () => {
  expect(depthAtPickup({ ...sump, place: 0.2, volume: 0.004, tilt: 0.2 })).toBeCloseTo(0.04, 12)
  expect(depthAtPickup({ ...sump, place: 0.3, volume: 0.004, tilt: 0.2 })).toBeLessThan(depthAtPickup({ ...sump, place: 0.1, volume: 0.004, tilt: 0.2 }))
})
test('the depths along the sump add up to the volume, floor covered or bare', () => {
  fc.assert(fc.property(fc.double({ min: 0, max: 1.1, noNaN: true }), fc.double({ min: 0.001, max: 0.008, noNaN: true }), (tilt, volume) => {
    const steps = 4000
    let held = 0
    for (let i = 0; i < steps; i++) held += depthAtPickup({ ...sump, place: (0.4 * (i + 0.5)) / steps, height: 0, volume, tilt }) * 0.2 * (0.4 / steps)
    expect(held / volume).toBeCloseTo(1, 2)
  }), { numRuns: 30 })
})
