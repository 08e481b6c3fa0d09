import { expect, test } from 'vitest'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { handoverStart, primaryDeadTime, secondarySmallestPulse } from '@trochoid/compute/fuel/fields.ts'
import { firstFull, stagesAt } from '../../src/article/figures/staging.ts'

const sheet = builds.street
const solved = solveBuild(sheet)
const start = valueAt(sheet, handoverStart)!

test('at the point’s own pressure it gives back the solved point', () => {
  for (const point of solved.points) {
    const at = stagesAt(sheet, point)(point.values['engine.manifoldPressure']!)!
    expect(at.fuel).toBeCloseTo(point.values['fuel.fuelPerCharge']!, 12)
    expect(at.primary).toBeCloseTo(point.values['fuel.primaryPulse']!, 9)
    expect(at.secondary).toBeCloseTo(point.values['fuel.secondaryPulse']!, 9)
    expect(at.duty).toBeCloseTo(point.values['fuel.worstDuty']!, 9)
  }
})
test('across the hand-over the fuel goes on evenly while the primaries step down', () => {
  const at = stagesAt(sheet, firstFull(solved.points)!)
  const before = at(start - 1)!, after = at(start)!
  expect(after.fuel / before.fuel).toBeCloseTo(1, 4)
  expect(before.secondary).toBe(0)
  expect(after.secondary).toBeCloseTo(valueAt(sheet, secondarySmallestPulse)!, 12)
  expect(after.primary).toBeLessThan(before.primary)
  expect(after.primary).toBeGreaterThan(valueAt(sheet, primaryDeadTime)!)
})
test('below the hand-over more pressure is more fuel and a longer pulse', () => {
  const at = stagesAt(sheet, firstFull(solved.points)!)
  const list = [50e3, 60e3, 70e3, 80e3].map((p) => at(p)!)
  for (let i = 1; i < list.length; i++) {
    expect(list[i]!.fuel).toBeGreaterThan(list[i - 1]!.fuel)
    expect(list[i]!.primary).toBeGreaterThan(list[i - 1]!.primary)
  }
})
test('asked for an earlier start with no width, the secondaries hold on at their least', () => {
  const at = stagesAt(sheet, firstFull(solved.points)!)
  expect(at(start - 2e3, { start: start - 8e3, width: 1e9 })!.secondary).toBeCloseTo(valueAt(sheet, secondarySmallestPulse)!, 6)
})
test('the first full point is the lowest speed at which pressure has come to its most', () => {
  const first = firstFull(solved.points)!
  const most = Math.max(...solved.points.map((p) => p.values['engine.manifoldPressure'] ?? 0))
  expect(first.values['engine.manifoldPressure']).toBeGreaterThanOrEqual(0.98 * most)
  for (const p of solved.points) if (p.speed < first.speed) expect(p.values['engine.manifoldPressure'] ?? 0).toBeLessThan(0.98 * most)
  expect(firstFull([])).toBeUndefined()
})
