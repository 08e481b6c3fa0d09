import { expect, test } from 'vitest'
import { chamberDisplacement } from '@trochoid/compute/engine/chamberDisplacement.ts'
import { describedDisplacement } from '@trochoid/compute/engine/describedDisplacement.ts'

const x = { generatingRadius: 0.105, eccentricity: 0.015, width: 0.08, shift: 0.003 }

test('the chosen description counts, the other does not', () => {
  expect(describedDisplacement({ ...x, describedBy: 'geometry', stated: 1 })).toBe(chamberDisplacement(x))
  expect(describedDisplacement({ ...x, describedBy: 'displacement', stated: 5e-4 })).toBe(5e-4)
})
