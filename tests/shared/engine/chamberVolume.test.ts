import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chamberVolume } from '@trochoid/compute/engine/chamberVolume.ts'

const turn = 2 * Math.PI
const sizes = fc.record({
  generatingRadius: fc.double({ min: 0.08, max: 0.15, noNaN: true }), eccentricity: fc.double({ min: 0.008, max: 0.018, noNaN: true }),
  width: fc.double({ min: 0.05, max: 0.12, noNaN: true }), shift: fc.double({ min: 0, max: 0.006, noNaN: true }),
})

test('it repeats after one and a half turns and is the same before and after its smallest', () => {
  fc.assert(fc.property(sizes, fc.double({ min: 0, max: 1.5 * turn, noNaN: true }), (x, shaftAngle) => {
    const here = chamberVolume({ ...x, shaftAngle })
    expect(chamberVolume({ ...x, shaftAngle: shaftAngle + 1.5 * turn }) / here).toBeCloseTo(1, 9)
    expect(chamberVolume({ ...x, shaftAngle: -shaftAngle }) / here).toBeCloseTo(1, 9)
  }))
})
test('it grows from 0° to 270°', () => {
  fc.assert(fc.property(sizes, (x) => {
    let last = -1
    for (let angle = 0; angle <= 0.75 * turn + 1e-9; angle += turn / 48) {
      const here = chamberVolume({ ...x, shaftAngle: angle })
      expect(here).toBeGreaterThan(last)
      last = here
    }
  }))
})
test('the three chambers of a rotor share what housing and rotor leave, whatever the angle', () => {
  fc.assert(fc.property(sizes, fc.double({ min: 0, max: turn, noNaN: true }), (x, angle) => {
    const all = (at: number) => [0, turn / 2, turn].reduce((sum, more) => sum + chamberVolume({ ...x, shaftAngle: at + more }), 0)
    expect(all(angle) / all(0)).toBeCloseTo(1, 9)
  }))
})
test('the area the three leave is the housing’s less the rotor’s', () => {
  // Area of the epitrochoid is π(R² + 3e²); that of a rotor without shift is counted here along its printed envelope.
  const [R, e] = [0.105, 0.015]
  const flank = (v: number): readonly [number, number] => {
    const s = Math.sqrt(1 - ((3 * e) / R) ** 2 * Math.sin(3 * v) ** 2)
    const along = R + 2 * e * s * Math.cos(3 * v)
    const across = ((3 * e * e) / R) * Math.sin(6 * v)
    return [along * Math.cos(2 * v) - across * Math.sin(2 * v), along * Math.sin(2 * v) + across * Math.cos(2 * v)]
  }
  let rotor = 0
  const n = 6000
  for (let i = 0; i < n; i++) {
    const [x, y] = flank(Math.PI / 6 + (i / n) * (Math.PI / 3))
    const [u, w] = flank(Math.PI / 6 + ((i + 1) / n) * (Math.PI / 3))
    rotor += (3 * (x * w - u * y)) / 2
  }
  const chambers = [0, turn / 2, turn].reduce((sum, shaftAngle) => sum + chamberVolume({ generatingRadius: R, eccentricity: e, width: 1, shift: 0, shaftAngle }), 0)
  expect(chambers).toBeCloseTo(Math.PI * (R * R + 3 * e * e) - rotor, 8)
})
