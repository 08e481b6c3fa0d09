import { describe, expect, test } from 'vitest'
import { chamberVolume } from '@trochoid/compute/engine/chamberVolume.ts'
import { deg } from '@trochoid/compute/quantity/si.ts'
import { chamberAngle, stroke } from '../../src/article/figures/rotor/cycle.ts'
import { flank, housingAt, middleAt, wall } from '../../src/article/figures/rotor/geometry.ts'

const form = { radius: 0.105, eccentricity: 0.015, shift: 0 }
const area = (places: readonly (readonly [number, number])[]): number => Math.abs(places.reduce((sum, [x, y], i) => {
  const [nx, ny] = places[(i + 1) % places.length]!
  return sum + (x * ny - nx * y) / 2
}, 0))
const drawn = (of: typeof form, shaft: number, which: number): number => area([...wall(of, shaft, which), ...flank(of, shaft, which).reverse()])

describe('the drawn rotor', () => {
  test('touches the housing with every apex, at every angle of the shaft', () => {
    for (const shaft of [0, 50, 270, 400, 1000]) for (const which of [0, 1, 2]) {
      const line = flank(form, deg(shaft), which), along = wall(form, deg(shaft), which)
      for (const [a, b] of [[line[0]!, along[0]!], [line.at(-1)!, along.at(-1)!]] as const) expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeLessThan(1e-7)
    }
  })
  test('encloses the volume that the formula gives, with and without a shift', () => {
    for (const shift of [0, 0.003]) for (const shaft of [0, 60, 135, 270, 500, 810]) for (const which of [0, 1, 2]) {
      const wanted = chamberVolume({ generatingRadius: form.radius, eccentricity: form.eccentricity, shift, width: 1, shaftAngle: chamberAngle(deg(shaft), which) })
      expect(drawn({ ...form, shift }, deg(shaft), which)).toBeCloseTo(wanted, 4)
    }
  })
  test('has its middle one eccentricity from the shaft, and a housing moved out by the shift', () => {
    expect(Math.hypot(...middleAt(form, 1.3))).toBeCloseTo(form.eccentricity, 12)
    const [x, y] = housingAt({ ...form, shift: 0.003 }, 0), [x0, y0] = housingAt(form, 0)
    expect(Math.hypot(x - x0, y - y0)).toBeCloseTo(0.003, 12)
    expect(x).toBeGreaterThan(x0)
  })
})

test('three chambers are a turn apart, and four strokes fill three turns', () => {
  expect([0, 1, 2].map((which) => stroke(chamberAngle(deg(100), which)))).toEqual(['expansion', 'exhaust', 'compression'])
  expect(new Set([10, 300, 600, 900].map((at) => stroke(deg(at)))).size).toBe(4)
})
