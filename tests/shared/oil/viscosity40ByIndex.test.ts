import fc from 'fast-check'
import { expect, test } from 'vitest'
import { viscosity40ByIndex } from '@trochoid/compute/oil/viscosity40ByIndex.ts'
import { viscosityIndexOf } from '@trochoid/compute/oil/viscosityIndexOf.ts'

test('turns the index round', () => {
  fc.assert(fc.property(fc.double({ min: 2.5e-6, max: 65e-6, noNaN: true }), fc.double({ min: -20, max: 250, noNaN: true }), (viscosity100, index) => {
    expect(viscosityIndexOf({ viscosity40: viscosity40ByIndex({ viscosity100, index }), viscosity100 })).toBeCloseTo(index, 6)
  }))
})
test('both branches meet at index 100', () => {
  expect(viscosity40ByIndex({ viscosity100: 14e-6, index: 100 })).toBeCloseTo(viscosity40ByIndex({ viscosity100: 14e-6, index: 100 + 1e-9 }), 12)
})
