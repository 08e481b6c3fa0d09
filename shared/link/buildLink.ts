import { type Field } from '../build/field.ts'
import { present } from '../build/migrations.ts'
import { readDocument } from '../build/schema.ts'
import { type Entry, type Sheet } from '../build/sheet.ts'
import { type Shape } from '../quantity/quantity.ts'
import { codeOf, readCode } from './code.ts'
import { LinkFault } from './fault.ts'

type Fields = ReadonlyMap<string, Field>
const shapesOf = (fields: Fields): ReadonlyMap<string, Shape> => new Map([...fields].map(([path, field]) => [path, field.shape]))

/** A whole build: the numbers and choices it says itself, and where each came from. Names, typed text and notes stay behind. */
export const buildCode = (sheet: Sheet, fields: Fields, note: string): Promise<string> =>
  codeOf(Object.entries(sheet.entries).map(([name, { value, from }]) => ({ name, value, ...(from !== undefined && { from }) })), shapesOf(fields), note, present)

export type ReadBuildLink =
  | { readonly ok: true; readonly sheet: Sheet; readonly note: string; /** Edition of the handbook that made it. */ readonly edition: number }
  | { readonly ok: false; readonly says: string; /** A later handbook could read it. */ readonly newer: boolean }

/** Reads the build of a link, whole or not at all, weighed as a file is. Never throws, whatever it is given. */
export async function readBuildCode(code: string, fields: Fields): Promise<ReadBuildLink> {
  try {
    const { items, note, version, edition } = await readCode(code, shapesOf(fields))
    if (version > present) throw new LinkFault('The link was made by a newer handbook, with a build sheet that this copy cannot read yet.', true)
    const entries = Object.fromEntries(items.map(({ name, ...entry }): [string, Entry] => [name, entry]))
    const read = readDocument({ format: 'trochoid-build', version, name: 'Build from a link', note: '', entries }, fields)
    if (!read.ok) throw new LinkFault(`The link holds a number that no build can have. ${read.says}`)
    return { ok: true, sheet: read.sheet, note, edition }
  } catch (error) {
    if (error instanceof LinkFault) return { ok: false, says: error.message, newer: error.newer }
    return { ok: false, says: 'The link could not be read in this browser.', newer: false }
  }
}
