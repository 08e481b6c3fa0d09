import fc from 'fast-check'
import { expect, test } from 'vitest'
import { run, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import twoStageCell from '@trochoid/compute/fuel/twoStageCell.calc.ts'
import twoStagePlan from '@trochoid/compute/fuel/twoStagePlan.calc.ts'

const full = { fullFuel: 170e-6, full: 2e5, speed: 733, density: 725, drop: 3.5e5, lastDrop: 3.5e5, primaryDeadTime: 0.9e-3, primarySmallest: 1.6e-3, secondaryDeadTime: 1e-3, secondarySmallest: 1.8e-3 }
const at = (change: Values) => run(twoStageCell, { ...startValues(twoStageCell), ...full, ...change }).outputs

test('at the solved point’s own pressure it is the plan of that point', () => {
  const there = at({ manifold: 2e5 })
  const plan = run(twoStagePlan, { ...startValues(twoStagePlan), ...full, fuel: full.fullFuel, manifold: 2e5, lambda: 0.79 }).outputs
  for (const name of ['primaryPulse', 'secondaryPulse']) expect(there[name]).toBeCloseTo(plan[name]!, 12)
})
test('fuel follows the manifold: half the pressure at like lambda is half the fuel', () => {
  const curve = { x: [3e4, 3e5], y: [0.85, 0.85] }
  expect(at({ curve, manifold: 1e5 })['fuel']).toBeCloseTo(full.fullFuel / 2, 12)
})
test('total fuel injected is continuous within half a per cent across the whole range, rising and falling', () => {
  for (const moving of ['rising', 'falling']) {
    let before: number | null = null
    for (let manifold = 3e4; manifold <= 2.2e5; manifold += 250) {
      const { primary, secondary, fuel } = at({ manifold, moving })
      expect((primary! + secondary!) / fuel!).toBeCloseTo(1, 12)
      const perPressure = (primary! + secondary!) / manifold
      if (before !== null) expect(Math.abs(perPressure / before - 1)).toBeLessThan(0.005)
      before = perPressure
    }
  }
})
test('a secondary rests or repeats, and never leaves the primaries less than they repeat', () => {
  fc.assert(fc.property(fc.double({ min: 3e4, max: 3e5, noNaN: true }), fc.double({ min: 100, max: 1000, noNaN: true }), fc.constantFrom('rising', 'falling'), (manifold, speed, moving) => {
    const { secondaryPulse, primaryPulse } = at({ manifold, speed, moving })
    if (secondaryPulse! > 0) {
      expect(secondaryPulse).toBeGreaterThanOrEqual(full.secondarySmallest * (1 - 1e-12))
      expect(primaryPulse).toBeGreaterThanOrEqual(full.primarySmallest * (1 - 1e-12))
    }
  }))
})
test('between off and on it depends on where the load comes from, and nowhere else', () => {
  expect(at({ manifold: 86e3, moving: 'rising' })['secondaryPulse']).toBe(0)
  expect(at({ manifold: 86e3, moving: 'falling' })['secondaryPulse']).toBeCloseTo(full.secondarySmallest, 12)
  for (const manifold of [5e4, 81e3, 9e4, 1.2e5, 2e5]) expect(at({ manifold, moving: 'rising' })['primaryPulse']).toBe(at({ manifold, moving: 'falling' })['primaryPulse'])
})
test('a regulator on outside air loses pressure as the manifold rises, so the same fuel takes longer', () => {
  const low = at({ manifold: 6e4, reference: 'atmosphere' }), held = at({ manifold: 6e4, reference: 'manifold' })
  expect(low['primaryPulse']).toBeLessThan(held['primaryPulse']!)
})
test('each fault is named where it holds', () => {
  expect(at({ manifold: 1.1e5 })['fault']).toBe(0)
  expect(at({ manifold: 9e4, secondarySmallest: 3e-3 })['fault']).toBe(1)
  expect(at({ manifold: 9.5e4, secondarySmallest: 12e-3, speed: 300 })['fault']).toBe(2)
  expect(at({ manifold: 2.5e4, primaryFlow: 4e-5 })['fault']).toBe(3)
  expect(at({ manifold: 2e5, secondaryFlow: 3e-6, speed: 900 })['fault']).toBe(4)
})
