import fc from 'fast-check'
import { expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { heatOfRadiator } from '@trochoid/compute/cooling/heatOfRadiator.ts'
import { ratedConductance } from '@trochoid/compute/cooling/ratedConductance.ts'
import { rating, sides } from './radiator.ts'

test('put back at its rating, the radiator casts off its rated heat', () => {
  fc.assert(fc.property(fc.double({ min: 1e4, max: 1e5, noNaN: true }), (heat) => {
    const { conductance } = ratedConductance({ ...rating, heat })
    expect(heatOfRadiator({ temperature: rating.coolantTemperature, coolant: rating.coolant, glycol: rating.glycol, air: rating.air, airTemperature: rating.airTemperature, conductance, ...sides })).toBeCloseTo(heat, 4)
  }))
})
test('effectiveness is the rated heat over what the air could take at most', () => {
  expect(ratedConductance(rating).effectiveness).toBeCloseTo(75e3 / (2 * 1005 * 60), 12)
})
test('a rating that breaks the second law is refused', () => {
  expect(() => ratedConductance({ ...rating, heat: 130e3 })).toThrow(NoAnswer)
})
