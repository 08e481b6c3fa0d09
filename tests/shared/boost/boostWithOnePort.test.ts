import { expect, test } from 'vitest'
import { boostWithOnePort } from '@trochoid/compute/boost/boostWithOnePort.ts'

test('nothing kept, nothing gained; half kept, twice the boost', () => {
  expect(boostWithOnePort({ pressure: 7e4, kept: 0 })).toBe(7e4)
  expect(boostWithOnePort({ pressure: 7e4, kept: 0.5 })).toBe(14e4)
})
