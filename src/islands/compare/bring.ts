import type { Field } from '@trochoid/compute/build/field.ts'
import type { Opened } from '../../state/anyBuild.ts'

type Fields = ReadonlyMap<string, Field>
const largest = 2_000_000

/** A build from a file, for this page alone: nothing that is kept is touched. */
export async function fromFile(file: File, fields: Fields): Promise<Opened> {
  if (file.size > largest) return { ok: false, says: `${file.name} is far larger than a build file can be.` }
  const { readSheet } = await import('@trochoid/compute/build/schema.ts')
  const read = readSheet(await file.text(), fields)
  return read.ok ? read : { ok: false, says: `${file.name} was not opened. ${read.field ? `${read.field}: ` : ''}${read.says}` }
}

/** A build from a link that was pasted. */
export async function fromLink(address: string, fields: Fields): Promise<Opened> {
  const { buildIn } = await import('@trochoid/compute/link/fragment.ts')
  const found = buildIn(address.trim())
  if (!found) return { ok: false, says: 'This address carries no build. A link to a build has “#build=” in it: paste the whole of it.' }
  const { readBuildCode } = await import('@trochoid/compute/link/buildLink.ts')
  return readBuildCode(found.code, fields)
}
