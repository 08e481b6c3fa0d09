import { expect, test } from 'vitest'
import { waterBoilingPressure } from '@trochoid/compute/cooling/waterBoilingPressure.ts'

// The check values of the release stand among the published checks; here is what must hold between them.
test('rises with temperature over the whole range, from the triple to the critical point', () => {
  let before = 0
  for (let temperature = 273.15; temperature <= 647; temperature += 2) {
    const pressure = waterBoilingPressure({ temperature })
    expect(pressure).toBeGreaterThan(before)
    before = pressure
  }
  expect(waterBoilingPressure({ temperature: 273.16 })).toBeCloseTo(611.657, 0)
  expect(waterBoilingPressure({ temperature: 647.096 }) / 22.064e6).toBeCloseTo(1, 5)
})
test('the logarithm is nearly straight over the inverse temperature: slope is the heat of evaporation over the gas constant', () => {
  const log = (temperature: number) => Math.log(waterBoilingPressure({ temperature }))
  const slope = (log(374) - log(372)) / (1 / 372 - 1 / 374)
  // 2,256.4 kJ/kg over 0.4615 kJ/(kg K), vapour taken as ideal: within 2 %.
  expect(slope / (2256.4 / 0.461526)).toBeCloseTo(1, 1)
})
