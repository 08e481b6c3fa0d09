import { expect, test } from 'vitest'
import { boostAtTurboSpeed } from '@trochoid/compute/boost/boostAtTurboSpeed.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'
import { curve, engine, onMap, rpm } from './engineAt.ts'
import { veAtSpeed } from '@trochoid/compute/engine/veAtSpeed.ts'

const at = (turboSpeed: number, speed = 4000 * rpm) => boostAtTurboSpeed({ ...engine, ...onMap, speed, ve: veAtSpeed({ curve, speed }), turboSpeed })

test('a faster wheel holds more boost and takes more power', () => {
  let before = 0
  for (const n of [40e3, 60e3, 80e3, 100e3, 115e3]) {
    const { manifold, asked } = at(n * rpm)
    expect(manifold).toBeGreaterThan(before)
    expect(asked).toBeGreaterThan(0)
    before = manifold
  }
})
test('a wheel that hardly turns neither helps nor hinders', () => expect(at(2000 * rpm)).toMatchObject({ manifold: engine.outside, asked: 0 }))
test('at the wheel speed of a solved point it holds the boost of that point', () => {
  const { values } = solveBuild(street, [5000 * rpm]).points[0]!
  const { manifold } = boostAtTurboSpeed({
    ...engine, ...onMap, charge: values['engine.chargeTemperature']!, lambda: values['engine.lambda']!, turbineTemperature: values['cooling.exhaustTemperature']!,
    speed: 5000 * rpm, ve: values['engine.volumetricEfficiency']!, overlapFactor: 0, compressionRatio: 1e9, turboSpeed: values['boost.compressorSpeed']!,
  })
  expect(manifold / values['engine.manifoldPressure']!).toBeCloseTo(1, 2)
})
