import * as z from 'zod/mini'
import { isQuantity } from '../quantity/quantity.ts'
import { readValue } from '../calculation/inputs.ts'
import { lineIds } from '../record/items.ts'
import { type BuildRecord } from '../record/record.ts'
import { type Field } from './field.ts'
import { migrated, present, type Document } from './migrations.ts'
import { emptySheet, type Entry, type Sheet } from './sheet.ts'

/** Files and links bring foreign data: it is read here, whole or not at all. Compiling validators would need code from text, which the pages forbid. */
z.config({ jitless: true })

export const largestFile = 2_000_000
const text = (length: number) => z.string().check(z.maxLength(length))
const entry = z.strictObject({
  value: z.unknown(),
  typed: z.optional(text(120)),
  from: z.optional(z.enum(['measured', 'maker', 'common', 'guess'])),
  note: z.optional(text(2000)),
})
const written = z.strictObject({
  value: z.optional(z.number()),
  text: z.optional(text(400)),
  typed: z.optional(text(120)),
  done: z.optional(z.boolean()),
  by: z.optional(text(80)),
  on: z.optional(z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/))),
  note: z.optional(text(2000)),
})
const record = z.strictObject({ lines: z.record(text(60), written), notes: text(20_000) })
const document = z.strictObject({
  format: z.literal('trochoid-build'),
  version: z.literal(present),
  name: text(120),
  note: text(4000),
  entries: z.record(text(80), entry),
  record: z.optional(record),
})

export type ReadSheet = { readonly ok: true; readonly sheet: Sheet } | { readonly ok: false; readonly field: string; readonly says: string }

/** Reads a build file. Refuses it whole, with the place and what would be right; touches nothing that is saved. */
export function readSheet(json: string, fields: ReadonlyMap<string, Field>): ReadSheet {
  if (json.length > largestFile) return no('', `This file is ${Math.round(json.length / 1e6)} MB; a build file is far smaller than ${largestFile / 1e6} MB.`)
  if (deepest(json) > 12) return no('', 'This file nests deeper than a build file does.')
  let data: unknown
  try { data = JSON.parse(json) } catch { return no('', 'This is not a build file: it is not JSON, or it is cut off.') }
  return readDocument(data, fields)
}

/** The same for data already parsed. */
export function readDocument(data: unknown, fields: ReadonlyMap<string, Field>): ReadSheet {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return no('', 'A build file holds one object.')
  const head = data as Partial<Sheet>
  if (head.format !== 'trochoid-build') return no('format', 'This is not a build file: its format is not “trochoid-build”.')
  if (typeof head.version === 'number' && head.version > present) return no('version', `This file was written by a newer handbook (version ${head.version}; this one reads up to ${present}). Update the handbook and open it again.`)
  const current = migrated(data as Document)
  if (!current) return no('version', `No build file was ever published as version ${String(head.version).slice(0, 20)}.`)
  const read = z.safeParse(document, current)
  if (!read.success) {
    const issue = read.error.issues[0]!
    return no(issue.path.join('.'), issue.code === 'unrecognized_keys' ? `There is a key that no build file has: ${issue.keys.map((k) => k.slice(0, 40)).join(', ')}.` : issue.message)
  }
  const entries: Record<string, Entry> = {}
  // The keys as they stand in the file: a validator may drop what it takes for an attack, and a file is read whole or not at all.
  for (const path of Object.keys(current['entries'] as object)) {
    const field = fields.get(path)
    const given = read.data.entries[path]
    if (!field || !given || !Object.hasOwn(read.data.entries, path)) return no(path.slice(0, 80), 'The build sheet has no such field.')
    if (given.value === null) { entries[path] = clean(given, null); continue }
    if (isQuantity(field.shape) && typeof given.value !== 'number') return no(path, `${field.shape.name} is a number in SI units here.`)
    const value = readValue(given.value, field.shape)
    if (!value.ok) return no(path, value.says)
    entries[path] = clean(given, value.value)
  }
  const lines = Object.entries(read.data.record?.lines ?? {})
  const unknown = lines.find(([id]) => !lineIds.has(id))
  if (unknown) return no('record', `The record has no line “${unknown[0].slice(0, 60)}”.`)
  return { ok: true, sheet: { ...emptySheet(read.data.name), note: read.data.note, entries, ...(read.data.record && { record: recordFrom(lines, read.data.record.notes) }) } }
}

/** Without what the file left out: an absent part stays absent. */
const recordFrom = (lines: readonly (readonly [string, z.infer<typeof written>])[], notes: string): BuildRecord =>
  ({ notes, lines: Object.fromEntries(lines.map(([id, line]) => [id, Object.fromEntries(Object.entries(line).filter(([, v]) => v !== undefined))])) })

const clean = (given: z.infer<typeof entry>, value: unknown): Entry => ({
  value,
  ...(given.typed !== undefined && { typed: given.typed }),
  ...(given.from !== undefined && { from: given.from }),
  ...(given.note !== undefined && { note: given.note }),
})
const no = (field: string, says: string): ReadSheet => ({ ok: false, field, says })

/** How deep brackets nest, strings left aside: read before parsing, so that depth costs nothing. */
function deepest(json: string): number {
  let depth = 0, most = 0, inside = false
  for (let i = 0; i < json.length; i++) {
    const c = json[i]
    if (inside) { if (c === '\\') i++; else if (c === '"') inside = false; continue }
    if (c === '"') inside = true
    else if (c === '{' || c === '[') most = Math.max(most, ++depth)
    else if (c === '}' || c === ']') depth--
  }
  return most
}

/** JSON Schema of a build file, for publishing: every field by path, in SI, with its sensible range told, not enforced. */
export function jsonSchema(fields: ReadonlyMap<string, Field>, id: string): object {
  const base = z.toJSONSchema(document) as { properties: Record<string, object> }
  const points = { type: 'object', required: ['x', 'y'], additionalProperties: false, properties: { x: { type: 'array', items: { type: 'number' } }, y: { type: 'array', items: { type: 'number' } } } }
  const valueSchema = ({ shape }: Field): object => {
    if (isQuantity(shape)) return { type: ['number', 'null'], description: `${shape.name}, SI; usually ${shape.range[0]} to ${shape.range[1]}` }
    if (shape.kind === 'choice') return { enum: [...Object.keys(shape.choices), null] }
    if (shape.kind === 'grade') return { type: ['string', 'null'], description: 'oil grade, as 10W-40' }
    if (shape.kind === 'curve') return { anyOf: [{ ...points, description: `${shape.y.name} over ${shape.x.name}, SI` }, { type: 'null' }] }
    return { anyOf: [{ type: 'object', required: ['name', 'referenceTemperature', 'referencePressure', 'lines'] }, { type: 'null' }] }
  }
  const entryOf = (f: Field): object => ({
    type: 'object', required: ['value'], additionalProperties: false, title: f.label ?? f.shape.name,
    properties: { value: valueSchema(f), typed: { type: 'string', maxLength: 120 }, from: { enum: ['measured', 'maker', 'common', 'guess'] }, note: { type: 'string', maxLength: 2000 } },
  })
  return {
    ...base, $id: id, title: 'Build sheet',
    properties: { ...base.properties, entries: { type: 'object', additionalProperties: false, properties: Object.fromEntries([...fields].map(([path, f]) => [path, entryOf(f)])) } },
  }
}
