import { expect, test } from 'vitest'
import { chamberVolume } from '@trochoid/compute/engine/chamberVolume.ts'
import { theoreticalMinimumVolume } from '@trochoid/compute/engine/theoreticalMinimumVolume.ts'
import { unshiftedMinimumVolume } from '@trochoid/compute/engine/unshiftedMinimumVolume.ts'

const x = { generatingRadius: 0.105, eccentricity: 0.015, width: 0.08 }

test('it is the chamber volume at no angle', () => {
  for (const shift of [0, 0.001, 0.003, 0.006]) expect(theoreticalMinimumVolume({ ...x, shift })).toBeCloseTo(chamberVolume({ ...x, shift, shaftAngle: 0 }), 15)
})
test('without shift it is the closed form; a shift adds to it', () => {
  expect(theoreticalMinimumVolume({ ...x, shift: 0 })).toBe(unshiftedMinimumVolume(x))
  expect(theoreticalMinimumVolume({ ...x, shift: 0.003 })).toBeGreaterThan(unshiftedMinimumVolume(x))
})
test('twice the size is eight times the volume', () => {
  const twice = { generatingRadius: 0.21, eccentricity: 0.03, width: 0.16, shift: 0.006 }
  expect(theoreticalMinimumVolume(twice) / theoreticalMinimumVolume({ ...x, shift: 0.003 })).toBeCloseTo(8, 9)
})
