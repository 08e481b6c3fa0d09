import { expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { allFields, chain, margins } from '@trochoid/compute/build/everything.ts'
import { corePaths } from '@trochoid/compute/build/given.ts'
import { corePointPaths } from '@trochoid/compute/build/pointValues.ts'

const registry = await loadRegistry()

test('the sheet holds every declared field', () => expect([...allFields.keys()].sort()).toEqual([...registry.fields.keys()].sort()))
test('the chain holds every calculation that makes values of the point', () => {
  const links = [...registry.calculations.values()].filter((c) => Object.values(c.out).some((out) => 'origin' in out)).map((c) => c.id)
  expect(chain.map((link) => link.calc.id).sort()).toEqual(links.sort())
})
test('every declared margin is weighed', () => expect(margins.map((m) => m.id).sort()).toEqual([...registry.margins.keys()].sort()))
test('there are at least 26 links and 120 quantities', () => {
  expect(margins.length).toBeGreaterThanOrEqual(26)
  expect(registry.quantities.size).toBeGreaterThanOrEqual(120)
})
test('every value of the point is made by the core, by the build as a whole, or by one link', () => {
  const made = [...corePointPaths, 'boost.thresholdSpeed', ...chain.flatMap((link) => link.outputs.map((o) => o.path))]
  expect(made.filter((path, i) => made.indexOf(path) !== i)).toEqual([])
  expect([...registry.pointValues.keys()].filter((path) => !made.includes(path))).toEqual([])
})
test('the core reads fields that exist', () => expect(corePaths.filter((path) => !allFields.has(path))).toEqual([]))
test('margins rest on, move and read what is declared', () => {
  for (const m of margins) {
    for (const f of [...m.rests, ...m.remedies.map((r) => r.field)]) expect(allFields.has(f.path), `${m.id}: ${f.path}`).toBe(true)
    for (const side of [m.demand, m.capacity]) expect(side.origin === 'field' ? allFields.has(side.path) : registry.pointValues.has(side.path), `${m.id}: ${side.path}`).toBe(true)
    if (!m.always) expect(m.remedies.length, m.id).toBeGreaterThanOrEqual(1)
  }
})
