import { expect, test } from 'vitest'
import { chancesOf } from '@trochoid/compute/uncertainty/chances.ts'
import { leftsOf, workOf } from '@trochoid/compute/uncertainty/sampling.ts'
import { wholeModel } from '@trochoid/compute/uncertainty/wholeModel.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

const plan = { sheet: builds.street, thresholds: {}, tolerances: {}, samples: 120, seed: 1 }
const work = workOf(plan, wholeModel)
const lefts = new Float64Array(work.items * work.weighed.length)
for (const _ of leftsOf(work, wholeModel, 0, work.items, lefts)) { /* all of it */ }
const chances = chancesOf(work, lefts)

test('over fewer speeds the build as it stands has what it has over all of them', () => {
  expect(work.speeds.length).toBeLessThan(26)
  for (const [column, w] of work.weighed.entries()) {
    const left = lefts[plan.samples * work.weighed.length + column]!
    if (w.left === null) expect(left, w.id).toBeNaN()
    // Boost is met between two speeds, on a straight line: the one number that a wider spacing moves.
    else expect(Math.abs(left - w.left) / (w.tight || 1), w.id).toBeLessThan(w.id === 'boost-by-wanted-speed' ? 0.2 : 1e-6)
  }
})
test('every link but knock is told, those that want a number as not known', () => {
  expect(chances.map((c) => c.id)).not.toContain('knock')
  expect(chances).toHaveLength(work.weighed.length)
  for (const c of chances) expect(c.enough === null, c.id).toBe(c.state === 'not known')
})
test('a rail’s pressure owes what it may be out to its regulator alone', () => {
  const rail = chances.find((c) => c.id === 'last-injector-pressure')!
  expect(rail.parts[0]!.input).toBe('fuel.regulator.setting')
  expect(rail.parts[0]!.share).toBeGreaterThan(0.9)
  expect(rail.firstOrder!.parts[0]!.share).toBeGreaterThan(0.95)
})
test('the chance to have the reserve too is never the larger one', () => {
  for (const c of chances) if (c.enough && c.reserve) expect(c.reserve.share, c.id).toBeLessThanOrEqual(c.enough.share)
})
