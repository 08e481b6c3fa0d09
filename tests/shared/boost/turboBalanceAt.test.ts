import { expect, test } from 'vitest'
import { turboBalanceAt } from '@trochoid/compute/boost/turboBalanceAt.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'
import { veAtSpeed } from '@trochoid/compute/engine/veAtSpeed.ts'
import { curve, engine, rpm } from './engineAt.ts'

const at = (speed: number, manifold: number, more = {}) => turboBalanceAt({ ...engine, speed, manifold, ve: veAtSpeed({ curve, speed }), compressorEfficiency: 0.72, ...more })

test('more shaft speed gives the turbine more over what the compressor takes; more boost asks more', () => {
  const spare = (speed: number, manifold: number) => { const { given, asked } = at(speed, manifold); return given - asked }
  expect(spare(4000 * rpm, 200e3)).toBeGreaterThan(spare(3000 * rpm, 200e3))
  expect(at(3500 * rpm, 220e3).asked).toBeGreaterThan(at(3500 * rpm, 180e3).asked)
  expect(at(3500 * rpm, 200e3, { flowCapacity: 0.35 }).before).toBeLessThan(at(3500 * rpm, 200e3).before)
})
test('filling and back-pressure agree with each other at the end', () => {
  const { before, air } = at(4000 * rpm, 200e3)
  const again = at(4000 * rpm, 200e3, { overlapFactor: 0 })
  expect(before).toBeGreaterThan(150e3)
  // Overlap at a ratio near one costs next to nothing.
  expect(again.air / air).toBeCloseTo(1, 1)
})
test('fed with the numbers of a solved point with its wastegate shut, both powers are those of that point', () => {
  const { values } = solveBuild(street, [2600 * rpm]).points[0]!
  const { asked, given, air } = at(2600 * rpm, values['engine.manifoldPressure']!, {
    charge: values['engine.chargeTemperature'], ve: values['engine.volumetricEfficiency'], overlapFactor: 0, compressionRatio: 1e9, lambda: values['engine.lambda'], turbineTemperature: values['cooling.exhaustTemperature'],
    compressorEfficiency: values['boost.compressorEfficiency'],
  })
  expect(air / values['engine.airFlow']!).toBeCloseTo(1, 1)
  expect(asked / values['boost.compressorPower']!).toBeCloseTo(1, 1)
  expect(given / asked).toBeCloseTo(1, 1)
})
