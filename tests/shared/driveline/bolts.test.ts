import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { growthOverBolt } from '@trochoid/compute/driveline/growthOverBolt.ts'
import { preloadBand } from '@trochoid/compute/driveline/preloadBand.ts'
import { preloadFromGrowth } from '@trochoid/compute/driveline/preloadFromGrowth.ts'
import { preloadFromTorque } from '@trochoid/compute/driveline/preloadFromTorque.ts'
import { proofStressOf } from '@trochoid/compute/driveline/proofStressOf.ts'
import { rodStiffness } from '@trochoid/compute/driveline/rodStiffness.ts'
import { threadStressArea } from '@trochoid/compute/driveline/threadStressArea.ts'
import { torqueFactorOf } from '@trochoid/compute/driveline/torqueFactorOf.ts'
import { torqueForPreload } from '@trochoid/compute/driveline/torqueForPreload.ts'
import preload from '@trochoid/compute/driveline/boltPreload.calc.ts'
import thermal from '@trochoid/compute/driveline/thermalPreload.calc.ts'

describe('torque and preload', () => {
  test('the factor taken from torque and preload gives the preload back', () => fc.assert(fc.property(fc.double({ min: 5, max: 300, noNaN: true }), fc.double({ min: 0.1, max: 0.3, noNaN: true }), fc.double({ min: 0.005, max: 0.02, noNaN: true }), (torque, factor, diameter) => {
    expect(torqueFactorOf({ torque, preload: preloadFromTorque({ torque, factor, diameter }), diameter })).toBeCloseTo(factor, 12)
  })))
  test('without friction the torque is that of the screw: preload times pitch over two pi', () => {
    const torque = torqueForPreload({ preload: 1e4, pitch: 0.0015, pitchDiameter: 0.009, thread: 0, headDiameter: 0.013, head: 0 })
    // 0.16 is 1/2π to two places.
    expect(torque / (1e4 * 0.0015)).toBeCloseTo(1 / (2 * Math.PI), 2)
  })
  test('an ordinary friction makes the factor that tables print', () => {
    const torque = torqueForPreload({ preload: 1e4, pitch: 0.0015, pitchDiameter: 0.009026, thread: 0.15, headDiameter: 0.0128, head: 0.15 })
    expect(torqueFactorOf({ torque, preload: 1e4, diameter: 0.01 })).toBeCloseTo(0.2, 2)
  })
  test('the band lies evenly about the mean', () => {
    const { least, most } = preloadBand({ preload: 20000, scatter: 0.25 })
    expect(least).toBe(15000)
    expect(most).toBe(25000)
  })
  test('the calculation judges the most that the bolt may hold', () => {
    const out = preload.answer({ ...startValues(preload), torque: 50, diameter: 0.01, pitch: 0.0015, factor: 0.2, method: 'torque-dry', class: '8.8' })
    expect(out['preload']).toBeCloseTo(25000, 6)
    expect(out['most']).toBeCloseTo(33750, 6)
    expect(out['used']).toBeCloseTo(33750 / (580e6 * threadStressArea({ diameter: 0.01, pitch: 0.0015 })), 9)
  })
})

test('class 8.8 is stronger above 16 mm, the others are not', () => {
  expect(proofStressOf({ propertyClass: '8.8', diameter: 0.0161 })).toBe(600e6)
  expect(proofStressOf({ propertyClass: '8.8', diameter: 0.016 })).toBe(580e6)
  for (const propertyClass of ['9.8', '10.9', '12.9'] as const) expect(proofStressOf({ propertyClass, diameter: 0.02 })).toBe(proofStressOf({ propertyClass, diameter: 0.01 }))
})

describe('a warm stack', () => {
  const layers = { aluminium: 0.16, iron: 0.12, ofAluminium: 23e-6, ofIron: 11e-6, ofBolt: 11e-6, warming: 80 }
  test('only what differs from the bolt grows over it', () => {
    expect(growthOverBolt(layers)).toBeCloseTo(0.16 * 12e-6 * 80, 12)
    expect(growthOverBolt({ ...layers, ofAluminium: 11e-6 })).toBeCloseTo(0, 15)
    expect(growthOverBolt({ ...layers, warming: 0 })).toBe(0)
    expect(growthOverBolt({ ...layers, ofIron: 12e-6 }) - growthOverBolt(layers)).toBeCloseTo(0.12 * 1e-6 * 80, 12)
  })
  test('a stiff stack puts all growth into the bolt, a soft one none', () => {
    expect(preloadFromGrowth({ growth: 1e-4, bolt: 1e8, stack: 1e20 })).toBeCloseTo(1e4, 3)
    expect(preloadFromGrowth({ growth: 1e-4, bolt: 1e8, stack: 1e-3 })).toBeLessThan(1e-6)
    expect(preloadFromGrowth({ growth: 1e-4, bolt: 1e8, stack: 1e8 })).toBeCloseTo(5e3, 6)
  })
  test('a bolt twice as long is half as stiff', () => {
    expect(rodStiffness({ modulus: 2e11, area: 1e-4, length: 0.2 }) * 2).toBeCloseTo(rodStiffness({ modulus: 2e11, area: 1e-4, length: 0.1 }), 3)
  })
  test('cold takes preload away', () => {
    const start = startValues(thermal)
    expect(thermal.answer({ ...start, warming: -40 })['change']).toBeLessThan(0)
    expect(thermal.answer({ ...start, warming: 75 })['change']).toBeGreaterThan(0)
    expect(thermal.answer({ ...start, warming: 0 })['change']).toBe(0)
  })
})
