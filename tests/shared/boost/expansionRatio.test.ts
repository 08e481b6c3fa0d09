import { expect, test } from 'vitest'
import { expansionRatio } from '@trochoid/compute/boost/expansionRatio.ts'

test('is 1 between equal pressures, and a silencer lowers it', () => {
  expect(expansionRatio({ inlet: 2e5, outlet: 2e5 })).toBe(1)
  expect(expansionRatio({ inlet: 2e5, outlet: 1.2e5 })).toBeLessThan(expansionRatio({ inlet: 2e5, outlet: 1e5 }))
})
