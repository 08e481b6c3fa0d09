import { expect, test } from 'vitest'
import { dropAtManifold } from '@trochoid/compute/fuel/dropAtManifold.ts'

test('a regulator that follows the manifold holds the pressure across the nozzle', () => expect(dropAtManifold({ drop: 3e5, reference: 'manifold', known: 2e5, manifold: 1e5 })).toBe(3e5))
test('one that does not gives it up one for one', () => {
  expect(dropAtManifold({ drop: 3e5, reference: 'atmosphere', known: 2e5, manifold: 1e5 })).toBe(4e5)
  expect(dropAtManifold({ drop: 3e5, reference: 'atmosphere', known: 2e5, manifold: 2e5 })).toBe(3e5)
})
