import fc from 'fast-check'
import { expect, test } from 'vitest'
import { depthAtPickup } from '@trochoid/compute/oil/depthAtPickup.ts'
import { volumeForDepth } from '@trochoid/compute/oil/volumeForDepth.ts'

test('the volume it asks leaves exactly the depth that was wanted', () => {
  fc.assert(fc.property(fc.double({ min: 0.01, max: 1.1, noNaN: true }), fc.double({ min: 0.05, max: 0.39, noNaN: true }), fc.double({ min: 0.005, max: 0.05, noNaN: true }), (tilt, place, cover) => {
    const sump = { length: 0.4, width: 0.2, place, height: 0.01, tilt }
    const volume = volumeForDepth({ ...sump, cover })
    if (volume > 0) expect(depthAtPickup({ ...sump, volume })).toBeCloseTo(cover, 9)
  }))
})
