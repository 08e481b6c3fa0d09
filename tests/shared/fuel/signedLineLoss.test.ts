import { expect, test } from 'vitest'
import { lineLossOf } from '@trochoid/compute/fuel/lineLossOf.ts'
import { signedLineLoss } from '@trochoid/compute/fuel/signedLineLoss.ts'

const line = { bore: 7.94e-3, length: 2, fittings: 4, roughness: 1.5e-6, density: 740, viscosity: 0.26e-3 }

test('forwards it is the loss of the line, backwards the same gained, and still fuel loses nothing', () => {
  expect(signedLineLoss({ flow: 5e-5, ...line })).toBe(lineLossOf({ flow: 5e-5, ...line }).loss)
  expect(signedLineLoss({ flow: -5e-5, ...line })).toBe(-lineLossOf({ flow: 5e-5, ...line }).loss)
  expect(signedLineLoss({ flow: 0, ...line })).toBe(0)
})
