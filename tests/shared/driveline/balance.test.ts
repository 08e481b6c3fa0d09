import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { gradeSpeedOf } from '@trochoid/compute/driveline/gradeSpeedOf.ts'
import { unbalanceForceAt } from '@trochoid/compute/driveline/unbalanceForceAt.ts'
import { unbalanceOfPlane } from '@trochoid/compute/driveline/unbalanceOfPlane.ts'
import { unbalanceSumOf } from '@trochoid/compute/driveline/unbalanceSumOf.ts'
import permissible from '@trochoid/compute/driveline/permissibleUnbalance.calc.ts'
import sum from '@trochoid/compute/driveline/unbalanceSum.calc.ts'

const amount = fc.double({ min: 1e-6, max: 1e-2, noNaN: true })
const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })

describe('unbalances as vectors', () => {
  const none = { u2: 0, a2: 0, u3: 0, a3: 0, u4: 0, a4: 0 }
  test('one alone stays what it is', () => fc.assert(fc.property(amount, fc.double({ min: -3.1, max: 3.1, noNaN: true }), (u1, a1) => {
    const out = unbalanceSumOf({ u1, a1, ...none })
    expect(out.amount).toBeCloseTo(u1, 12)
    expect(out.angle).toBeCloseTo(a1, 9)
  })))
  test('two alike and opposite leave nothing', () => {
    expect(unbalanceSumOf({ u1: 5, a1: 0.7, ...none, u2: 5, a2: 0.7 + Math.PI }).amount).toBeCloseTo(0, 12)
  })
  test('never more than all together, never less than the largest less the others', () => fc.assert(fc.property(amount, angle, amount, angle, amount, angle, amount, angle, (u1, a1, u2, a2, u3, a3, u4, a4) => {
    const out = unbalanceSumOf({ u1, a1, u2, a2, u3, a3, u4, a4 }).amount
    const all = [u1, u2, u3, u4], total = u1 + u2 + u3 + u4
    expect(out).toBeLessThanOrEqual(total * (1 + 1e-12))
    expect(out).toBeGreaterThanOrEqual(2 * Math.max(...all) - total - 1e-15)
  })))
  test('the order does not matter, and turning all turns the sum', () => fc.assert(fc.property(amount, angle, amount, angle, (u1, a1, u2, a2) => {
    const here = unbalanceSumOf({ u1, a1, ...none, u2, a2 })
    const swapped = unbalanceSumOf({ u1: 0, a1: 0, u2: 0, a2: 0, u3: u2, a3: a2, u4: u1, a4: a1 })
    expect(swapped.amount).toBeCloseTo(here.amount, 12)
    const turned = unbalanceSumOf({ u1, a1: a1 + 1, ...none, u2, a2: a2 + 1 })
    expect(turned.amount).toBeCloseTo(here.amount, 12)
  })))
  test('the force is that of the sum at speed', () => {
    const out = sum.answer({ ...startValues(sum), speed: 800, u1: 3e-5, a1: 0, u2: 4e-5, a2: Math.PI / 2, u3: 0, a3: 0, u4: 0, a4: 0 })
    expect(out['force']).toBeCloseTo(unbalanceForceAt({ unbalance: 5e-5, speed: 800 }), 9)
    expect(out['force']).toBeCloseTo(32, 9)
  })
})

describe('permissible unbalance', () => {
  const start = { ...startValues(permissible), grade: 'G6.3', mass: 10, speed: 630, far: 0.2, span: 0.4 }
  test('grade over angular speed, times mass', () => {
    const out = permissible.answer(start)
    expect(out['offset']).toBeCloseTo(1e-5, 12)
    expect(out['unbalance']).toBeCloseTo(1e-4, 12)
    expect(out['nearPlane']).toBeCloseTo(5e-5, 12)
    expect(out['force']).toBeCloseTo(1e-4 * 630 ** 2, 9)
  })
  test('the two planes share out the whole', () => fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
    expect(unbalanceOfPlane({ whole: 3, far: share, span: 1 }) + unbalanceOfPlane({ whole: 3, far: 1 - share, span: 1 })).toBeCloseTo(3, 12)
  })))
  test('a centre of mass outside the planes is refused, one at a plane is not', () => {
    expect(() => permissible.answer({ ...start, far: 0.5 })).toThrow(NoAnswer)
    expect(permissible.answer({ ...start, far: 0.4 })['nearPlane']).toBeCloseTo(1e-4, 12)
  })
  test('each grade is its number in millimetres a second', () => {
    for (const grade of ['G0.4', 'G1', 'G2.5', 'G6.3', 'G16', 'G40', 'G100'] as const) expect(gradeSpeedOf({ grade })).toBeCloseTo(Number(grade.slice(1)) / 1000, 12)
  })
})
