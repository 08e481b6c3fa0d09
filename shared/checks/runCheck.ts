import { type Registry } from '../formula/known.ts'
import { type Shape } from '../quantity/quantity.ts'
import { inUnit } from '../quantity/write.ts'
import { readArithmetic } from '../quantity/arithmetic.ts'
import { readValue } from '../calculation/inputs.ts'
import { quantityOf } from '../calculation/calculation.ts'
import { type Check } from './check.ts'

export type Compared = { readonly output: string; readonly unit: string; readonly expected: number; readonly computed: number; readonly difference: number; readonly tolerance: number; readonly passes: boolean }
export type CheckResult = { readonly check: Check; readonly compared: readonly Compared[]; readonly passes: boolean }

/** Runs one published case through the formula or calculation it names. */
export function runCheck(check: Check, registry: Registry): CheckResult {
  const known = registry.formulas.get(check.of)
  const calc = registry.calculations.get(check.of)
  if (!known && !calc) throw new Error(`${check.id}: there is no formula or calculation ${check.of}`)
  const shapes: Record<string, Shape> = known ? { ...known.about.in } : Object.fromEntries(Object.entries(calc!.in).map(([name, input]) => [name, input.shape]))
  const values: Record<string, unknown> = {}
  for (const [name, given] of Object.entries(check.in)) {
    const shape = shapes[name]
    if (!shape) throw new Error(`${check.id}: ${check.of} has no input ${name}`)
    // A number is taken as it stands: a published case may lie far outside what a build meets.
    values[name] = typeof given === 'number' ? given : valueOf(given, shape, check.id)
  }
  if (calc) for (const [name, input] of Object.entries(calc.in)) {
    if (!(name in values) && input.origin === 'free') values[name] = input.default
    if (!(name in values) && input.origin === 'field') values[name] = input.start
  }
  const result: unknown = known ? (known.formula as unknown as (x: unknown) => unknown)(values) : calc!.answer(values)
  const compared = Object.entries(check.out).map(([output, e]) => {
    const quantity = known
      ? ('id' in known.about.out && typeof known.about.out.id === 'string' ? known.about.out : (known.about.out as Record<string, unknown>)[output])
      : calc!.out[output] && quantityOf(calc!.out[output])
    if (!quantity) throw new Error(`${check.id}: ${check.of} has no output ${output}`)
    const si = typeof result === 'number' ? result : (result as Record<string, number>)[output]!
    const computed = inUnit(si, quantity as Parameters<typeof inUnit>[1], e.unit)
    const difference = computed - e.value
    return { output, unit: e.unit, expected: e.value, computed, difference, tolerance: e.tolerance, passes: Math.abs(difference) <= e.tolerance * (1 + 1e-9) }
  })
  return { check, compared, passes: compared.every((c) => c.passes) }
}

function valueOf(given: unknown, shape: Shape, id: string): unknown {
  const wide = 'range' in shape ? { ...shape, range: [-1e30, 1e30] as const } : shape
  const value = readValue(given, wide, readArithmetic)
  if (!value.ok) throw new Error(`${id}: ${value.says}`)
  return value.value
}
