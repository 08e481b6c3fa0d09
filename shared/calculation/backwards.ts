import { isQuantity } from '../quantity/quantity.ts'
import { scanRoots } from '../numerics/scan.ts'
import { untraced } from '../formula/trace.ts'
import { write } from '../quantity/write.ts'
import { NoAnswer, labelOf, quantityOf, type AnyCalculation, type Values } from './calculation.ts'

export type Backwards = { readonly values: readonly number[]; readonly jumps: readonly number[]; readonly notes: readonly string[] }

/**
 * The values of one input at which one output takes a wanted value, all other inputs held.
 * Scans the input's sensible range at 65 points and closes in on every change of sign.
 */
export function solveFor(of: AnyCalculation, values: Values, input: string, output: string, wanted: number): Backwards {
  const shape = of.in[input]?.shape
  const out = of.out[output]
  if (!shape || !isQuantity(shape)) throw new RangeError(`${input} is not a number that can be solved for`)
  if (!out) throw new RangeError(`${output} is not an output of ${of.id}`)
  const quantity = quantityOf(out)
  const f = (x: number): number => {
    try { return of.answer({ ...values, [input]: shape.whole ? Math.round(x) : x })[output]! - wanted } catch (error) { if (error instanceof NoAnswer) return NaN; throw error }
  }
  const [low, high] = shape.range
  const { roots, jumps, gaps } = untraced(() => scanRoots(f, low, high))
  const name = labelOf(of.in[input]!)
  const notes: string[] = []
  if (roots.length === 0) notes.push(`No ${name} from ${write(low, shape)} to ${write(high, shape)} gives ${quantity.name} ${write(wanted, quantity)}.`)
  if (roots.length > 1) notes.push(`${roots.length} values give it.`)
  if (jumps.length > 0) notes.push(`${quantity.name} leaps past the wanted value at ${jumps.map((x) => write(x, shape)).join(', ')} without taking it.`)
  if (gaps) notes.push('Part of the range has no answer and was passed over.')
  if (roots.length > 0) notes.push(`Values closer together than ${write((high - low) / 64, { ...shape, kind: shape.kind === 'temperature' ? 'temperatureDifference' : shape.kind, ...(shape.kind === 'temperature' ? { show: ['K', 'Δ°F'] } : {}) })} may be missed.`)
  return { values: roots.map((r) => r.x), jumps, notes }
}
