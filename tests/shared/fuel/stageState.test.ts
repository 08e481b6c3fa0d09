import { expect, test } from 'vitest'
import { stageState } from '@trochoid/compute/fuel/stageState.ts'

const fine = { primaryPulse: 4e-3, secondaryPulse: 3e-3, primaryLeast: 1.6e-3, secondaryLeast: 1.8e-3, longest: 8e-3, wanted: 20e-6, given: 20e-6 }

test('nothing is wrong where nothing is', () => {
  expect(stageState(fine)).toBe(0)
  expect(stageState({ ...fine, secondaryPulse: 0, wanted: 0, given: 0 })).toBe(0)
})
test('each fault has its number, the gravest first', () => {
  expect(stageState({ ...fine, secondaryPulse: 1.8e-3, wanted: 5e-6, given: 12e-6 })).toBe(1)
  expect(stageState({ ...fine, secondaryPulse: 0, given: 0 })).toBe(2)
  expect(stageState({ ...fine, primaryPulse: 1.5e-3 })).toBe(3)
  expect(stageState({ ...fine, secondaryPulse: 8.1e-3 })).toBe(4)
  expect(stageState({ ...fine, primaryPulse: 1.5e-3, secondaryPulse: 9e-3 })).toBe(4)
})
test('a pulse exactly at its limit is within it', () => {
  expect(stageState({ ...fine, primaryPulse: 1.6e-3 })).toBe(0)
  expect(stageState({ ...fine, primaryPulse: 8e-3 })).toBe(0)
})
