import { type Field } from '../build/field.ts'
import { fromAt, valueAt, type From, type Sheet } from '../build/sheet.ts'
import { isQuantity, type CompressorMap, type Points } from '../quantity/quantity.ts'
import { shownUnit, write, writeNumber, type System } from '../quantity/write.ts'

/** One number in which two sheets differ, or only in where it came from. */
export type Differing = {
  readonly path: string
  readonly field: Field
  readonly name: string
  readonly before: Said
  readonly after: Said
  /** The number is the same: only its source differs. */
  readonly sourceOnly: boolean
}
export type Said = { readonly value: unknown; readonly from: From; readonly note: string }

/** What differs in the sheet from one build to another, in the order of the sheet. */
export function differing(a: Sheet, b: Sheet, fields: ReadonlyMap<string, Field>): readonly Differing[] {
  return [...fields.values()].flatMap((field) => {
    const said = (sheet: Sheet): Said => ({ value: valueAt(sheet, field), from: fromAt(sheet, field), note: sheet.entries[field.path]?.note ?? '' })
    const [before, after] = [said(a), said(b)]
    const sourceOnly = JSON.stringify(before.value) === JSON.stringify(after.value)
    return sourceOnly && before.from === after.from ? [] : [{ path: field.path, field, name: field.label ?? field.shape.name, before, after, sourceOnly }]
  })
}

/** A value of the sheet in words and in the reader's units, curves and maps by what they span. */
export function valueWords(value: unknown, { shape }: Field, system: System = 'metric'): string {
  if (value === null || value === undefined) return 'not known'
  if (isQuantity(shape)) return write(value as number, shape, shownUnit(shape, system))
  if (shape.kind === 'choice') return (shape.choices as Readonly<Record<string, string>>)[String(value)] ?? String(value)
  if (shape.kind === 'grade') return String(value)
  if (shape.kind === 'map') return `“${(value as CompressorMap).name}”`
  const { x, y } = value as Points
  const say = (of: typeof shape.x, low: number, high: number): string => {
    const unit = shownUnit(of, system)
    return low === high ? write(low, of, unit) : `${write(low, of, unit).split('\u202f')[0]!} to ${write(high, of, unit)}`
  }
  return `${say(shape.y, Math.min(...y), Math.max(...y))} over ${say(shape.x, x[0]!, x.at(-1)!)}`
}

/** By how much a number is larger, for one that can be read as a ratio: `20 % more`. */
export function moreWords({ field: { shape }, before, after }: Differing): string {
  const a = before.value
  const b = after.value
  if (!isQuantity(shape) || shape.kind === 'temperature' || typeof a !== 'number' || typeof b !== 'number' || a <= 0 || b <= 0 || a === b) return ''
  const share = b / a - 1
  return `${writeNumber(Math.abs(share) * 100, 2)}\u202f% ${share > 0 ? 'more' : 'less'}`
}
