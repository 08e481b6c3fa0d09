import type { Field } from '@trochoid/compute/build/field.ts'
import type { Opened } from './anyBuild.ts'

const largest = 2_000_000

/** A build from a file. Refused whole, with the number it fails on by the name the sheet gives it; touches nothing that is kept. */
export async function openFile(file: File, fields: ReadonlyMap<string, Field>): Promise<Opened> {
  if (file.size > largest) return { ok: false, says: `${file.name} was not opened: it is far larger than a build file can be.` }
  const { readSheet } = await import('@trochoid/compute/build/schema.ts')
  const read = readSheet(await file.text(), fields)
  return read.ok ? read : { ok: false, says: `${file.name} was not opened; nothing that is here was touched. ${placeOf(read.field, fields)}${read.says}` }
}

function placeOf(path: string, fields: ReadonlyMap<string, Field>): string {
  const field = fields.get(path.replace(/^entries\./, '').replace(/\.(value|typed|from|note)$/, ''))
  return field ? `${field.label ?? field.shape.name} (${path}): ` : path && `${path}: `
}
