import { expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { quantityOf } from '@trochoid/compute/calculation/calculation.ts'
import { boltUnderLoad } from '@trochoid/compute/driveline/boltUnderLoad.ts'
import { clampUnderLoad } from '@trochoid/compute/driveline/clampUnderLoad.ts'
import { correctionMassFor } from '@trochoid/compute/driveline/correctionMassFor.ts'
import { drillDepthFor } from '@trochoid/compute/driveline/drillDepthFor.ts'
import { oppositeAngle } from '@trochoid/compute/driveline/oppositeAngle.ts'
import { profileRingInertia } from '@trochoid/compute/driveline/profileRingInertia.ts'
import { profileRingMass } from '@trochoid/compute/driveline/profileRingMass.ts'
import { separatingLoad } from '@trochoid/compute/driveline/separatingLoad.ts'
import { faceAtSpeed } from '@trochoid/compute/engine/faceAtSpeed.ts'

test('bolt and clamp share the load between them, and at the separating load the clamp is gone', () => {
  const x = { preload: 20e3, load: 7e3, factor: 0.3 }
  expect(boltUnderLoad(x) - clampUnderLoad(x)).toBeCloseTo(x.load, 9)
  expect(clampUnderLoad({ ...x, load: separatingLoad(x) })).toBeCloseTo(0, 9)
})
test('a ring of one thickness has the mass and inertia of the textbook', () => {
  const ring = { inner: 0.05, outer: 0.15, innerThickness: 0.02, outerThickness: 0.02, density: 7850 }
  expect(profileRingMass(ring)).toBeCloseTo(Math.PI * (0.15 ** 2 - 0.05 ** 2) * 0.02 * 7850, 10)
  expect(profileRingInertia(ring)).toBeCloseTo((Math.PI / 2) * (0.15 ** 4 - 0.05 ** 4) * 0.02 * 7850, 10)
})
test('a tapered ring agrees with many thin ones', () => {
  const ring = { inner: 0.05, outer: 0.15, innerThickness: 0.03, outerThickness: 0.01, density: 7850 }
  let mass = 0, inertia = 0
  const n = 4000
  for (let i = 0; i < n; i++) { const r = 0.05 + (0.1 * (i + 0.5)) / n, t = 0.03 - (0.02 * (i + 0.5)) / n, dm = 2 * Math.PI * r * t * 7850 * (0.1 / n); mass += dm; inertia += dm * r * r }
  expect(profileRingMass(ring)).toBeCloseTo(mass, 5)
  expect(profileRingInertia(ring)).toBeCloseTo(inertia, 6)
})
test('the hole that is drilled holds the mass that was asked; opposite of opposite is where it was', () => {
  const mass = correctionMassFor({ unbalance: 80e-6, radius: 0.13 })
  const depth = drillDepthFor({ mass, diameter: 0.008, density: 7850 })
  expect((Math.PI / 4) * 0.008 ** 2 * depth * 7850 * 0.13).toBeCloseTo(80e-6, 12)
  for (const angle of [-2, 0.3, 1.5]) expect(oppositeAngle({ angle: oppositeAngle({ angle }) })).toBeCloseTo(angle, 12)
})
test('a face that does not leak reads the same at any speed; a leaking one reads more when cranked faster', () => {
  expect(faceAtSpeed({ reading: 9e5, ideal: 9e5, speed: 22, wanted: 30, outside: 1e5 })).toBeCloseTo(9e5, 6)
  const faster = faceAtSpeed({ reading: 7e5, ideal: 9e5, speed: 22, wanted: 26, outside: 1e5 })
  expect(faster).toBeGreaterThan(7e5)
  expect(faceAtSpeed({ reading: faster, ideal: 9e5, speed: 26, wanted: 22, outside: 1e5 })).toBeCloseTo(7e5, 6)
})
test('wherever a rim’s speed is told, the caution on bursting stands beside it', async () => {
  const { calculations } = await loadRegistry()
  for (const c of calculations.values()) {
    const shapes = [...Object.values(c.out).map(quantityOf), ...Object.values(c.in).map((i) => i.shape)]
    if (shapes.some((s) => s.id === 'rim-speed' || s.id === 'speed-of-the-belt')) expect(c.cautions, c.id).toContain('rotating-burst')
  }
})
