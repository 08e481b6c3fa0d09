import { expect, test } from 'vitest'
import { thresholdSpeed } from '@trochoid/compute/boost/thresholdSpeed.ts'
import { turboBalanceAt } from '@trochoid/compute/boost/turboBalanceAt.ts'
import { veAtSpeed } from '@trochoid/compute/engine/veAtSpeed.ts'
import { curve, engine } from './engineAt.ts'

const at = (more = {}) => thresholdSpeed({ ...engine, manifold: 201325, compressorEfficiency: 0.7, curve, ...more })

test('there the turbine gives just what the compressor takes', () => {
  const speed = at()
  const { asked, given } = turboBalanceAt({ ...engine, manifold: 201325, compressorEfficiency: 0.7, speed, ve: veAtSpeed({ curve, speed }) })
  expect(given / asked).toBeCloseTo(1, 6)
})
test('a larger turbine, more boost, a worse compressor, cooler gas and a tighter exhaust each raise it', () => {
  const base = at()
  for (const more of [{ flowCapacity: 0.3 }, { manifold: 221325 }, { compressorEfficiency: 0.6 }, { turbineTemperature: 1050 }, { exhaustLoss: 200e3 }, { inletLoss: 60e3 }]) expect(at(more), JSON.stringify(more)).toBeGreaterThan(base)
})
test('a boost that the turbine never drives is refused in words', () => expect(() => at({ flowCapacity: 5 })).toThrow(/never/))
