import { isQuantity } from '../quantity/quantity.ts'
import { type Field } from './field.ts'
import { valueAt, type Sheet } from './sheet.ts'

/** A field whose value is another in another build. */
export type Differing = { readonly field: Field; readonly here: unknown; readonly there: unknown }

/** The fields in which two builds differ, those furthest apart first, measured in how well such a number is usually known. */
export function differing(here: Sheet, there: Sheet, fields: ReadonlyMap<string, Field>): readonly Differing[] {
  const paths = new Set([...Object.keys(here.entries), ...Object.keys(there.entries)])
  return [...paths].flatMap((path): Differing[] => {
    const field = fields.get(path)
    if (!field) return []
    const [a, b] = [valueAt(here, field), valueAt(there, field)]
    return alike(a, b) ? [] : [{ field, here: a, there: b }]
  }).sort((a, b) => (steps(a) === steps(b) ? 0 : steps(b) - steps(a)))
}

const steps = ({ field: { shape }, here, there }: Differing): number =>
  isQuantity(shape) && typeof here === 'number' && typeof there === 'number' ? Math.abs(here - there) / shape.step : Infinity

/** The same value, where a link or a file may have rounded its last figures; the name of a map is no value. */
export function alike(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  keys.delete('name')
  return [...keys].every((key) => alike((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
}
