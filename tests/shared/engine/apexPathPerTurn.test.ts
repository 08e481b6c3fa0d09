import fc from 'fast-check'
import { expect, test } from 'vitest'
import { apexPathPerTurn } from '@trochoid/compute/engine/apexPathPerTurn.ts'
import { apexSealMeanSpeed } from '@trochoid/compute/engine/apexSealMeanSpeed.ts'
import { apexSealSpeed } from '@trochoid/compute/engine/apexSealSpeed.ts'
import { apexSealSpeedRange } from '@trochoid/compute/engine/apexSealSpeedRange.ts'

const sizes = fc.record({
  generatingRadius: fc.double({ min: 0.08, max: 0.15, noNaN: true }), eccentricity: fc.double({ min: 0.008, max: 0.018, noNaN: true }),
  shift: fc.double({ min: 0, max: 0.006, noNaN: true }), speed: fc.double({ min: 60, max: 1100, noNaN: true }),
})

test('it is the mean of the speed over the angle', () => {
  fc.assert(fc.property(sizes, (x) => {
    const n = 720
    let sum = 0
    for (let i = 0; i < n; i++) sum += apexSealSpeed({ ...x, rotorAngle: (2 * Math.PI * i) / n })
    expect(apexSealMeanSpeed({ perTurn: apexPathPerTurn(x), speed: x.speed }) / (sum / n)).toBeCloseTo(1, 9)
  }))
})
test('the extremes stand at the long and the short axis and bound every place between', () => {
  fc.assert(fc.property(sizes, fc.double({ min: 0, max: 6.3, noNaN: true }), (x, rotorAngle) => {
    const { highest, lowest } = apexSealSpeedRange(x)
    expect(apexSealSpeed({ ...x, rotorAngle: 0 }) / highest).toBeCloseTo(1, 12)
    expect(apexSealSpeed({ ...x, rotorAngle: Math.PI / 2 }) / lowest).toBeCloseTo(1, 12)
    const here = apexSealSpeed({ ...x, rotorAngle })
    expect(here).toBeLessThanOrEqual(highest * (1 + 1e-12))
    expect(here).toBeGreaterThanOrEqual(lowest * (1 - 1e-12))
  }))
})
