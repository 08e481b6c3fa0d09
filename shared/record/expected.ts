import { type FieldValues } from '../build/fieldValues.ts'
import { type BuildRecord } from './record.ts'
import { measuredItems, type Measured } from './items.ts'

export type Wanted = { readonly low: number; readonly high: number; /** Field that says so; null for common practice. */ readonly field: string | null }

/** What the sheet, or common practice, expects of a measurement; null where neither says. */
export function wantedOf({ expected }: Measured, fields: FieldValues): Wanted | null {
  if (!expected) return null
  if ('range' in expected) return { low: expected.range[0], high: expected.range[1], field: null }
  const value = fields.get(expected.field)
  if (typeof value !== 'number') return null
  const half = expected.share ? Math.abs(value) * expected.within : expected.within
  return { low: value - half, high: value + half, field: expected.field }
}

/** Whether a figure lies outside what is wanted of it. A rounding in the last figure is no fault. */
export const liesOutside = (value: number | undefined, wanted: Wanted | null): boolean =>
  value !== undefined && wanted !== null && (value < wanted.low * (1 - 1e-9) || value > wanted.high * (1 + 1e-9))

/** Measurements that lie outside what is expected, and by how much the faces of each rotor differ. */
export function outsideOf(record: BuildRecord, fields: FieldValues): readonly Measured[] {
  return measuredItems.filter((item) => liesOutside(record.lines[item.id]?.value, wantedOf(item, fields)))
}

/** Largest difference between faces of one rotor; null where fewer than two were measured. */
export function faceSpread(record: BuildRecord, rotor: 'front' | 'rear'): number | null {
  const faces = [1, 2, 3].map((n) => record.lines[`face-${rotor}-${n}`]?.value).filter((v): v is number => v !== undefined)
  return faces.length < 2 ? null : Math.max(...faces) - Math.min(...faces)
}
