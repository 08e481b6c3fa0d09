import { describe, expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { labelOf, NoAnswer, quantityOf, run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { nowhere } from '@trochoid/compute/calculation/nowhere.ts'
import { sampleValues, startValues } from '@trochoid/compute/calculation/samples.ts'
import { solveFor } from '@trochoid/compute/calculation/backwards.ts'

const { calculations, formulas, fields, pointValues } = await loadRegistry()
const only = process.env['THEME']
const shown = [...calculations.values()].filter((c) => !only || c.theme === only)
const attempt = (of: AnyCalculation, values: Values) => { try { return run(of, values) } catch (error) { if (error instanceof NoAnswer) return null; throw error } }

describe.each(shown.map((c) => [c.id, c] as const))('%s', (_, of) => {
  test('answers its start values with finite numbers', () => {
    const { outputs, says } = run(of, startValues(of))
    expect(Object.keys(outputs).sort()).toEqual(Object.keys(of.out).sort())
    for (const [name, value] of Object.entries(outputs)) expect(Number.isFinite(value), name).toBe(true)
    const names = [...Object.keys(of.in), ...Object.keys(of.out)]
    for (const [, name] of says.matchAll(/\{(\w+)\}/g)) expect(names).toContain(name)
  })
  test('no number from nowhere', () => {
    const samples = [startValues(of), ...Array.from({ length: 50 }, (_, i) => sampleValues(of, i))]
    for (const values of samples) {
      const done = attempt(of, values)
      if (done) expect(nowhere(of, values, done.trace, done.outputs)).toEqual([])
    }
  })
  test('its formulas are known and its curve can be drawn and solved backwards', () => {
    const done = run(of, startValues(of))
    for (const entry of done.trace) if (entry.id !== 'root') expect(formulas.has(entry.id), entry.id).toBe(true)
    const [input, output] = of.curve
    expect(of.in[input]).toBeDefined()
    expect(of.out[output]).toBeDefined()
    const back = solveFor(of, startValues(of), input, output, done.outputs[output]!)
    expect(back.values.length + back.jumps.length).toBeGreaterThan(0)
  })
  test('no two of its inputs, and no two of its outputs, carry the same label', () => {
    for (const labels of [Object.values(of.in).map(labelOf), Object.values(of.out).map((out) => ('label' in out && out.label) || quantityOf(out).name)]) expect(new Set(labels).size, labels.join(', ')).toBe(labels.length)
  })
  test('its inputs are declared', () => {
    for (const input of Object.values(of.in)) {
      if (input.origin === 'field') expect(fields.get(input.path)?.field.shape.id, input.path).toBe(input.shape.id)
      if (input.origin === 'point') expect(pointValues.get(input.path)?.shape.id, input.path).toBe(input.shape.id)
    }
  })
})
