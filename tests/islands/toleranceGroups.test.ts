import { expect, test } from 'vitest'
import { allFields } from '@trochoid/compute/build/everything.ts'
import { methods, methodsFor, spreadBy } from '@trochoid/compute/uncertainty/methods.ts'
import { groups } from '../../src/islands/chance/groups.ts'

test('every field of the sheet has a fold for its tolerance', () => {
  const known = new Set(groups.flatMap(({ of }) => of))
  expect([...allFields.keys()].filter((path) => !known.has(path.split('.')[0]!))).toEqual([])
})
test('every way to measure says where its figure comes from, and gives one', () => {
  expect(new Set(methods.map((m) => m.id)).size).toBe(methods.length)
  for (const m of methods) { expect(m.source.length, m.id).toBeGreaterThan(10); expect(spreadBy(m, 1).half, m.id).toBeGreaterThan(0) }
  expect(spreadBy(methodsFor('gaugePressure').find((m) => m.id === 'gauge-2.5')!, 4e5).half).toBe(2e4)
})
