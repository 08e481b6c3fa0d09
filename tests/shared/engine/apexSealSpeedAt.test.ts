import { apexPathPerTurn } from '@trochoid/compute/engine/apexPathPerTurn.ts'
import { apexSealMeanSpeed } from '@trochoid/compute/engine/apexSealMeanSpeed.ts'
import { apexSealSpeedAt } from '@trochoid/compute/engine/apexSealSpeedAt.ts'
import { apexSealSpeedRange } from '@trochoid/compute/engine/apexSealSpeedRange.ts'
import fc from 'fast-check'
import { expect, test } from 'vitest'

const housings = fc.record({ generatingRadius: fc.double({ min: 0.08, max: 0.15, noNaN: true }), eccentricity: fc.double({ min: 0.008, max: 0.02, noNaN: true }), shift: fc.double({ min: 0, max: 0.005, noNaN: true }), speed: fc.double({ min: 50, max: 1100, noNaN: true }) })

test('is the published highest speed across the long axis and the lowest at the waist', () => {
  fc.assert(fc.property(housings, (x) => {
    const { highest, lowest } = apexSealSpeedRange(x)
    expect(apexSealSpeedAt({ ...x, angle: 0 })).toBeCloseTo(highest, 9)
    expect(apexSealSpeedAt({ ...x, angle: Math.PI / 2 })).toBeCloseTo(lowest, 9)
  }))
})

test('has the mean that the length of the path gives', () => {
  fc.assert(fc.property(housings, (x) => {
    const count = 720
    let sum = 0
    for (let i = 0; i < count; i++) sum += apexSealSpeedAt({ ...x, angle: (2 * Math.PI * i) / count })
    const mean = apexSealMeanSpeed({ perTurn: apexPathPerTurn(x), speed: x.speed })
    expect(sum / count / mean).toBeCloseTo(1, 6)
  }))
})
