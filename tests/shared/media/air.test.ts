import { expect, test } from 'vitest'
import { airEnthalpyRise } from '@trochoid/compute/media/airEnthalpyRise.ts'
import { saturationPressure } from '@trochoid/compute/media/saturationPressure.ts'
import { vapourPressure } from '@trochoid/compute/media/vapourPressure.ts'
import { vapourShare } from '@trochoid/compute/media/vapourShare.ts'

test('water boils at one atmosphere and 373.12 K', () => expect(saturationPressure({ temperature: 373.1243 })).toBeCloseTo(101325, -1))
test('saturation pressure rises with temperature, by about 7 % a kelvin at room temperature', () => {
  const at = (temperature: number) => saturationPressure({ temperature })
  let last = 0
  for (let T = 235; T < 647; T += 2) {
    expect(at(T)).toBeGreaterThan(last)
    last = at(T)
  }
  expect(at(294.15) / at(293.15)).toBeGreaterThan(1.06)
  expect(at(294.15) / at(293.15)).toBeLessThan(1.07)
})
test('the critical point ends the line', () => expect(saturationPressure({ temperature: 647.096 })).toBeCloseTo(22.064e6, 3))
test('half the humidity is half the vapour', () => expect(vapourPressure({ humidity: 0.5, saturation: 2000 })).toBe(1000))
test('vapour is a share of all the pressure', () => expect(vapourShare({ vapourPressure: 2000, pressure: 1e5 })).toBeCloseTo(0.02, 15))
test('warming air takes heat, cooling it gives the same heat back', () => {
  expect(airEnthalpyRise({ flow: 0.2, from: 300, to: 400 })).toBeCloseTo(20100, 9)
  expect(airEnthalpyRise({ flow: 0.2, from: 400, to: 300 })).toBeCloseTo(-20100, 9)
})
