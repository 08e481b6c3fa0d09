import { expect, test } from 'vitest'
import { correctedSpeed } from '@trochoid/compute/boost/correctedSpeed.ts'
import { actualSpeed } from '@trochoid/compute/boost/actualSpeed.ts'

test('at the reference it is the speed itself; hot air counts as less speed', () => {
  expect(correctedSpeed({ speed: 9000, temperature: 298, referenceTemperature: 298 })).toBe(9000)
  expect(correctedSpeed({ speed: 9000, temperature: 330, referenceTemperature: 298 })).toBeLessThan(9000)
})
test('is undone by the speed from it', () => {
  const corrected = correctedSpeed({ speed: 9000, temperature: 320, referenceTemperature: 298 })
  expect(actualSpeed({ corrected, temperature: 320, referenceTemperature: 298 })).toBeCloseTo(9000, 9)
})
