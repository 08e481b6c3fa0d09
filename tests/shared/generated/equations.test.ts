import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { dimensionOf, dimOfShape, inDeclared, valueOf } from '@trochoid/compute/formula/evaluate.ts'
import { type About } from '@trochoid/compute/formula/formula.ts'
import { type Known } from '@trochoid/compute/formula/known.ts'
import { isQuantity, type Choice, type Quantity, type Shape } from '@trochoid/compute/quantity/quantity.ts'

const { formulas } = await loadRegistry()
const only = process.env['FOLDER']
const shown = [...formulas.values()].filter((f) => !only || f.folder === only)

/** Where the test samples an input: what the author says, else the source's range, else the quantity's. */
function sampler(f: Known): fc.Arbitrary<Record<string, number | string>> {
  const entries = Object.entries(f.about.in).map(([name, shape]: [string, Shape]) => {
    if (shape.kind === 'choice') return [name, fc.constantFrom(...Object.keys((shape as Choice).choices))] as const
    if (!isQuantity(shape)) throw new Error(`${f.id}: ${name} is no number; use the kind "steps"`)
    const stated = (f.formula.range as Record<string, readonly [number, number] | undefined>)[name]
    const [low, high] = f.about.sample?.[name] ?? stated ?? shape.range
    if (shape.whole) return [name, fc.integer({ min: Math.ceil(low), max: Math.floor(high) })] as const
    return [name, fc.double({ min: low, max: high, noNaN: true })] as const
  })
  return fc.record(Object.fromEntries(entries))
}
const outsOf = (about: About): Record<string, Quantity> => ('id' in about.out && typeof about.out.id === 'string' ? { out: about.out as Quantity } : (about.out as Record<string, Quantity>))
const outputs = (y: unknown): Record<string, number> => (typeof y === 'number' ? { out: y } : (y as Record<string, number>))
const call = (f: Known, x: Record<string, unknown>): Record<string, number> => outputs((f.formula as unknown as (x: unknown) => unknown)(x))
const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) + 1e-300

describe.each(shown.map((f) => [f.id, f] as const))('%s', (_, f) => {
  const { about } = f
  if ('equation' in about) {
    const equations = typeof about.equation === 'string' ? { out: about.equation } : about.equation
    test('its printed equation gives what the code gives', () => {
      expect(Object.keys(equations).sort()).toEqual(Object.keys(outsOf(about)).sort())
      fc.assert(fc.property(sampler(f), (x) => {
        const y = call(f, x)
        for (const [name, equation] of Object.entries(equations)) {
          const printed = valueOf(equation, about, x)
          const coded = inDeclared(name, y[name]!, about)
          if (!near(printed, coded)) throw new Error(`${name}: printed ${printed}, coded ${coded} at ${JSON.stringify(x)}`)
        }
      }), { numRuns: 100 })
    })
    test('its printed equation has the dimension of its output', () => {
      const x = fc.sample(sampler(f), { numRuns: 1, seed: 7 })[0]! as Record<string, number>
      for (const [name, equation] of Object.entries(equations)) {
        if (about.units?.[name] !== undefined) continue
        expect(dimensionOf(equation, about, x), name).toEqual([...dimOfShape(outsOf(about)[name]!)])
      }
    })
  } else if ('holds' in about) {
    test('its printed equations hold at the answer', () => {
      fc.assert(fc.property(sampler(f), (x) => {
        const y = call(f, x)
        for (const equation of [about.holds].flat()) {
          const [left, right] = equation.split(/(?<![<>=!])=(?!=)/).map((side) => valueOf(side.trim(), about, { ...x, ...y })) as [number, number]
          if (Math.abs(left - right) > 1e-6 * Math.max(Math.abs(left), Math.abs(right), 1e-12)) throw new Error(`${equation}: ${left} against ${right} at ${JSON.stringify(x)}`)
        }
      }), { numRuns: 60 })
    })
  } else if ('table' in about) {
    test('it gives the table at its nodes', () => {
      expect(about.nodes.length).toBeGreaterThan(2)
      for (const node of about.nodes) {
        const y = call(f, node.in)
        for (const [name, value] of Object.entries(outputs(node.out))) expect(near(y[name]!, value), `${name} at ${JSON.stringify(node.in)}: ${y[name]} for ${value}`).toBe(true)
      }
    })
  } else {
    test('its steps are told and it has a test of its own', async () => {
      expect(about.steps.length).toBeGreaterThan(0)
      const { existsSync } = await import('node:fs')
      expect(existsSync(new URL(`../../../tests/shared/${f.file.replace(/\.ts$/, '.test.ts')}`, import.meta.url)), `tests/shared/${f.file.replace(/\.ts$/, '.test.ts')}`).toBe(true)
    })
  }
})

test('every formula is read', () => expect(formulas.size).toBeGreaterThan(0))
