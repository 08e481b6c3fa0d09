import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chamberDisplacement } from '@trochoid/compute/engine/chamberDisplacement.ts'
import { chamberVolume } from '@trochoid/compute/engine/chamberVolume.ts'
import { shortDisplacement } from '@trochoid/compute/engine/shortDisplacement.ts'

const sizes = fc.record({
  generatingRadius: fc.double({ min: 0.08, max: 0.15, noNaN: true }), eccentricity: fc.double({ min: 0.008, max: 0.018, noNaN: true }),
  width: fc.double({ min: 0.05, max: 0.12, noNaN: true }), shift: fc.double({ min: 0, max: 0.006, noNaN: true }),
})

test('it is the largest less the smallest chamber volume', () => {
  fc.assert(fc.property(sizes, (x) => {
    const swept = chamberVolume({ ...x, shaftAngle: 1.5 * Math.PI }) - chamberVolume({ ...x, shaftAngle: 0 })
    expect(chamberDisplacement(x) / swept).toBeCloseTo(1, 9)
  }))
})
test('without shift it is the short product, with one a little less', () => {
  fc.assert(fc.property(sizes, (x) => {
    expect(chamberDisplacement({ ...x, shift: 0 })).toBe(shortDisplacement({ ...x, shift: 0 }))
    if (x.shift < 1e-4) return
    expect(chamberDisplacement(x)).toBeLessThan(shortDisplacement(x))
    expect(chamberDisplacement(x) / shortDisplacement(x)).toBeGreaterThan(0.995)
    expect(chamberDisplacement(x)).toBeGreaterThan(chamberDisplacement({ ...x, shift: 0 }))
  }))
})
