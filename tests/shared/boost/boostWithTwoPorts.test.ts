import { expect, test } from 'vitest'
import { boostWithTwoPorts } from '@trochoid/compute/boost/boostWithTwoPorts.ts'
import { boostWithOnePort } from '@trochoid/compute/boost/boostWithOnePort.ts'

test('nothing on the closing side, nothing gained; equal areas act as one port does', () => {
  expect(boostWithTwoPorts({ pressure: 7e4, closing: 0, areaRatio: 0.9 })).toBe(7e4)
  expect(boostWithTwoPorts({ pressure: 7e4, closing: 0.4, areaRatio: 1 })).toBeCloseTo(boostWithOnePort({ pressure: 7e4, kept: 0.4 }), 8)
})
