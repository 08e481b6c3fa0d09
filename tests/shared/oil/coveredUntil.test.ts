import { expect, test } from 'vitest'
import { coveredUntil } from '@trochoid/compute/oil/coveredUntil.ts'
import { depthAtPickup } from '@trochoid/compute/oil/depthAtPickup.ts'
import { tiltOf } from '@trochoid/compute/oil/tiltOf.ts'

const sump = { length: 0.42, width: 0.22, place: 0.26, height: 0.01, volume: 0.003 }

test('at the acceleration found the pick-up has the depth that was wanted', () => {
  const acceleration = coveredUntil({ ...sump, cover: 0.01 })
  expect(depthAtPickup({ ...sump, tilt: tiltOf({ acceleration }) })).toBeCloseTo(0.01, 6)
})
test('a pick-up at the wall to which the oil runs is never bared', () => expect(coveredUntil({ ...sump, place: 0.02, cover: 0.01 })).toBeNaN())
test('one gravity tilts the surface by 45°', () => expect(tiltOf({ acceleration: 9.80665 })).toBeCloseTo(Math.PI / 4, 12))
