import { expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { kinds } from '@trochoid/compute/quantity/kinds.ts'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { unitOf } from '@trochoid/compute/quantity/units.ts'
import { shownUnit } from '@trochoid/compute/quantity/write.ts'

const registry = await loadRegistry()

test('every quantity has words, an honest range and units that exist', () => {
  for (const [id, { quantity, words }] of registry.quantities) {
    expect(words?.means.length ?? 0, `${id} means`).toBeGreaterThan(10)
    expect(words?.measure.length ?? 0, `${id} measure`).toBeGreaterThan(5)
    if (!isQuantity(quantity)) continue
    expect(quantity.range[0], id).toBeLessThan(quantity.range[1])
    expect(quantity.step, id).toBeGreaterThan(0)
    for (const system of ['metric', 'imperial'] as const) expect(unitOf(quantity.kind, shownUnit(quantity, system)).kinds, id).toContain(quantity.kind)
    expect(kinds[quantity.kind]).toBeDefined()
  }
})
test('every field says why its start value stands there', () => {
  for (const [path, { why }] of registry.fields) expect(why?.length ?? 0, path).toBeGreaterThan(10)
})
test('every field starts inside its quantity’s range', () => {
  for (const [path, { field }] of registry.fields) {
    if (!isQuantity(field.shape) || field.start === null) continue
    expect(field.start, path).toBeGreaterThanOrEqual(field.shape.range[0])
    expect(field.start, path).toBeLessThanOrEqual(field.shape.range[1])
  }
})
test('every formula and check names a source that is listed or written out', () => {
  for (const [id, { about }] of registry.formulas) {
    expect(registry.sources[about.source[0]], `${id}: ${about.source[0]}`).toBeDefined()
    expect(about.source[1].length, id).toBeGreaterThan(0)
  }
  for (const check of registry.checks) expect(check.source.length, check.id).toBeGreaterThan(10)
})
