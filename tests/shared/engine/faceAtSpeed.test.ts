import { expect, test } from 'vitest'
import { faceAtSpeed } from '@trochoid/compute/engine/faceAtSpeed.ts'

const outside = 1e5, ideal = 17e5
const at = (speed: number, wanted: number, reading = 8e5): number => faceAtSpeed({ reading, ideal, speed, wanted, outside })

test('turned ever faster the face has no time to leak, turned ever slower it holds nothing', () => {
  expect(at(26, 1e9)).toBeCloseTo(ideal, -1)
  expect(at(26, 1e-3) + outside).toBeCloseTo(0, 6)
})
test('by way of a third speed the reading is the same', () => {
  expect(at(24, 30, at(26, 24))).toBeCloseTo(at(26, 30), 6)
})
// Half of the charge lost at one speed: three quarters at half of it, as in any decay.
test('a face that keeps half keeps a quarter at half the speed', () => {
  const half = (ideal + outside) / 2 - outside
  expect(at(26, 13, half) + outside).toBeCloseTo((ideal + outside) / 4, 6)
})
// The same by stepping: mass m in a volume V(t) loses C p per unit of time, with p = m R T / V, whatever the volume does.
test('agrees with the loss counted step by step through a compression', () => {
  const kept = (turns: number, speed: number): number => {
    let mass = 1
    const steps = 20_000
    for (let i = 0; i < steps; i++) { const volume = 1 - 0.85 * ((i + 0.5) / steps); mass -= (mass * 0.4 * (turns / speed / steps)) / volume }
    return mass
  }
  const slow = kept(1, 1) * (ideal + outside) - outside
  expect(at(1, 1.4, slow)).toBeCloseTo(kept(1, 1.4) * (ideal + outside) - outside, -2)
})
