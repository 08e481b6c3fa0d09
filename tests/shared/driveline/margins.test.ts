import { expect, test } from 'vitest'
import clutch from '@trochoid/compute/driveline/clutch.margin.ts'
import driveline from '@trochoid/compute/driveline/driveline.margin.ts'
import flywheel from '@trochoid/compute/driveline/flywheel.margin.ts'

test('a rating that only the reader knows starts unknown, and its margin rests on it', () => {
  for (const margin of [...driveline, flywheel]) {
    expect(margin.capacity.origin).toBe('field')
    expect(margin.rests).toContain(margin.capacity)
    expect('start' in margin.capacity && margin.capacity.start).toBeNull()
  }
})
test('the clutch rests on its rating and the basis of it', () => {
  expect(clutch.rests.map((f) => f.path)).toEqual(['driveline.clutch.rating', 'driveline.clutch.basis'])
})
test('a flywheel is inside or outside, and nothing else', () => {
  expect(new Set(Object.values(flywheel.words ?? {}))).toEqual(new Set(['inside', 'outside']))
  expect(flywheel.over).toBe('build')
})
