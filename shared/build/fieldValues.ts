import { allFields } from './everything.ts'
import { valueAt, type Sheet } from './sheet.ts'

/** Every field's value in one sheet, by path; null where it is not known. */
export type FieldValues = ReadonlyMap<string, unknown>

export const fieldValues = (sheet: Sheet): FieldValues => new Map([...allFields].map(([path, field]) => [path, valueAt(sheet, field)]))
