import { expect, test } from 'vitest'
import { exhaustForceOnRod } from '@trochoid/compute/boost/exhaustForceOnRod.ts'

test('is nothing between equal pressures; a lever and a larger valve raise it', () => {
  const at = (inlet: number, diameter: number, leverRatio: number): number => exhaustForceOnRod({ inlet, outlet: 1.2e5, diameter, leverRatio })
  expect(at(1.2e5, 0.038, 1)).toBe(0)
  expect(at(2.2e5, 0.04, 1)).toBeCloseTo(1e5 * Math.PI * 4e-4, 9)
  expect(at(2.2e5, 0.04, 0.5)).toBeCloseTo(at(2.2e5, 0.04, 1) / 2, 9)
  expect(at(2.2e5, 0.04, 1)).toBeCloseTo(4 * at(2.2e5, 0.02, 1), 9)
})
