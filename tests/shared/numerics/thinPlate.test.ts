import { thinPlate, type Sample } from '@trochoid/compute/numerics/thinPlate.ts'
import { describe, expect, it } from 'vitest'
import reference from '../../reference/thinPlate.json' with { type: 'json' }

describe('a thin plate through samples', () => {
  it.each(reference.surfaces)('agrees with an independent library: $name, smoothing $smoothing', ({ samples, smoothing, at, value }) => {
    const surface = thinPlate(samples as unknown as Sample[], smoothing)!
    at.forEach(([x, y], i) => expect(surface(x!, y!)).toBeCloseTo(value[i]!, 9))
  })
  it('passes through every sample and keeps a plane a plane, also beyond them', () => {
    const plane = (x: number, y: number): number => 2 - 3 * x + 0.5 * y
    const samples = [[0, 0], [1, 0.2], [0.3, 1], [0.8, 0.9], [0.5, 0.1]].map(([x, y]) => [x!, y!, plane(x!, y!)] as const)
    const surface = thinPlate(samples)!
    for (const [x, y] of [[0.3, 0.3], [-2, 5], [10, 10]]) expect(surface(x!, y!)).toBeCloseTo(plane(x!, y!), 8)
  })
  it('has no answer for samples on one line, for a doubled place, or for too few', () => {
    expect(thinPlate([[0, 0, 1], [1, 1, 2], [2, 2, 3]])).toBeNull()
    expect(thinPlate([[0, 0, 1], [0, 0, 2], [1, 0, 3], [0, 1, 4]])).toBeNull()
    expect(thinPlate([[0, 0, 1], [1, 0, 2]])).toBeNull()
  })
})
