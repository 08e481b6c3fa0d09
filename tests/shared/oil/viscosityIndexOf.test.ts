import fc from 'fast-check'
import { expect, test } from 'vitest'
import { indexAbove100 } from '@trochoid/compute/oil/indexAbove100.ts'
import { indexUpTo100 } from '@trochoid/compute/oil/indexUpTo100.ts'
import { indexReferences } from '@trochoid/compute/oil/indexReferences.ts'
import { viscosityIndexOf } from '@trochoid/compute/oil/viscosityIndexOf.ts'

const hot = fc.double({ min: 2.2e-6, max: 60e-6, noNaN: true })

test('the two reference oils have index 0 and 100', () => {
  fc.assert(fc.property(hot, (viscosity100) => {
    const { low, high } = indexReferences({ viscosity100 })
    expect(viscosityIndexOf({ viscosity40: low, viscosity100 })).toBeCloseTo(0, 8)
    expect(viscosityIndexOf({ viscosity40: high, viscosity100 })).toBeCloseTo(100, 8)
  }))
})
test('the procedures meet at index 100', () => {
  const { low, high } = indexReferences({ viscosity100: 12e-6 })
  expect(indexUpTo100({ viscosity40: high, low, high })).toBeCloseTo(indexAbove100({ viscosity40: high, viscosity100: 12e-6, high }), 9)
})
test('a thinner oil at 40 °C has the higher index', () => {
  fc.assert(fc.property(hot, fc.double({ min: 1.2, max: 6, noNaN: true }), (viscosity100, times) => {
    const viscosity40 = viscosity100 * times
    expect(viscosityIndexOf({ viscosity40, viscosity100 })).toBeGreaterThan(viscosityIndexOf({ viscosity40: viscosity40 * 1.02, viscosity100 }))
  }))
})
test('just below the better reference oil the second procedure is used', () => {
  const { low, high } = indexReferences({ viscosity100: 14e-6 })
  const thin = high * 0.6
  expect(viscosityIndexOf({ viscosity40: thin, viscosity100: 14e-6 })).not.toBeCloseTo(indexUpTo100({ viscosity40: thin, low, high }), 0)
})
