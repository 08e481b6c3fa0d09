import { expect, test } from 'vitest'
import { coupledFrequencies } from '@trochoid/compute/engine/coupledFrequencies.ts'
import { helmholtzFrequency } from '@trochoid/compute/engine/helmholtzFrequency.ts'
import { pulseSpeed } from '@trochoid/compute/engine/pulseSpeed.ts'

const size = { soundSpeed: 345, chamber: 409e-6, runnerArea: 16e-4, runnerLength: 0.3, plenum: 2500e-6, feedArea: 40e-4, feedLength: 0.6 }

test('with a plenum as large as the outside, chamber and runner swing alone', () => {
  const { high } = coupledFrequencies({ ...size, plenum: 50 })
  expect(high).toBeCloseTo(helmholtzFrequency({ soundSpeed: 345, area: 16e-4, length: 0.3, volume: 409e-6 }), 2)
})
test('with runners that pass next to nothing, the plenum swings on its pipe alone', () => {
  const both = coupledFrequencies({ ...size, runnerArea: 1e-9 })
  expect(Math.max(both.low, both.high)).toBeCloseTo(helmholtzFrequency({ soundSpeed: 345, area: 40e-4, length: 0.6, volume: 2500e-6 }), 3)
})
test('with runners as wide as can be, chamber and plenum swing as one volume', () => {
  const { low } = coupledFrequencies({ ...size, runnerArea: 100 })
  expect(low).toBeCloseTo(helmholtzFrequency({ soundSpeed: 345, area: 40e-4, length: 0.6, volume: 2909e-6 }), 2)
})
test('together they lie apart from either alone, and a larger plenum brings the lower one down', () => {
  const both = coupledFrequencies(size)
  const plenum = helmholtzFrequency({ soundSpeed: 345, area: 40e-4, length: 0.6, volume: 2500e-6 })
  const runner = helmholtzFrequency({ soundSpeed: 345, area: 16e-4, length: 0.3, volume: 409e-6 })
  expect(both.low).toBeLessThan(Math.min(plenum, runner))
  expect(both.high).toBeGreaterThan(Math.max(plenum, runner))
  expect(coupledFrequencies({ ...size, plenum: 5000e-6 }).low).toBeLessThan(both.low)
})
test('two rotors pulse twice in a turn', () => expect(pulseSpeed({ frequency: 100, rotors: 2 })).toBeCloseTo(2 * Math.PI * 50, 12))
