import { expect, test } from 'vitest'
import { dilutionAfter } from '@trochoid/compute/oil/dilutionAfter.ts'
import { dilutionSettled } from '@trochoid/compute/oil/dilutionSettled.ts'
import { driveRateOf } from '@trochoid/compute/oil/driveRateOf.ts'
import { timeToDilution } from '@trochoid/compute/oil/timeToDilution.ts'

const sump = { inflow: 8e-6, mass: 4.3, driven: driveRateOf({ hourly: 0.08 }) }

test('at the time found the oil holds that much fuel', () => {
  const time = timeToDilution({ ...sump, limit: 0.04 })
  expect(dilutionAfter({ ...sump, time })).toBeCloseTo(0.04, 12)
})
test('beyond where it settles there is no time', () => {
  const settles = dilutionSettled(sump)
  expect(timeToDilution({ ...sump, limit: settles * 1.01 })).toBeNaN()
  expect(dilutionAfter({ ...sump, time: 1e9 })).toBeCloseTo(settles, 9)
})
test('with nothing given off fuel adds up in proportion', () => expect(dilutionAfter({ ...sump, driven: 1e-12, time: 3600 })).toBeCloseTo((8e-6 * 3600) / 4.3, 6))
test('eight per cent given off in an hour leave ninety-two', () => expect(Math.exp(-sump.driven * 3600)).toBeCloseTo(0.92, 12))
