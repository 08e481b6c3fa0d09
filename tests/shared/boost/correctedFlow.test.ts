import { expect, test } from 'vitest'
import { correctedFlow } from '@trochoid/compute/boost/correctedFlow.ts'
import { actualFlow } from '@trochoid/compute/boost/actualFlow.ts'

const near = { temperature: 308, pressure: 95e3, referenceTemperature: 298.15, referencePressure: 1e5 }
test('at the reference it is the flow itself', () => {
  expect(correctedFlow({ flow: 0.3, temperature: 288.15, pressure: 101325, referenceTemperature: 288.15, referencePressure: 101325 })).toBeCloseTo(0.3, 15)
})
test('thin or hot air counts as more flow', () => {
  const here = correctedFlow({ flow: 0.3, ...near })
  expect(correctedFlow({ flow: 0.3, ...near, pressure: 80e3 })).toBeGreaterThan(here)
  expect(correctedFlow({ flow: 0.3, ...near, temperature: 320 })).toBeGreaterThan(here)
})
test('is undone by the mass flow from it', () => {
  expect(actualFlow({ corrected: correctedFlow({ flow: 0.3, ...near }), ...near })).toBeCloseTo(0.3, 14)
})
