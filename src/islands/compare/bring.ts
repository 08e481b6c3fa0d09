import type { Field } from '@trochoid/compute/build/field.ts'
import type { Opened } from '../../state/anyBuild.ts'

type Fields = ReadonlyMap<string, Field>

/** A build from a link that was pasted. */
export async function fromLink(address: string, fields: Fields): Promise<Opened> {
  const { buildIn } = await import('@trochoid/compute/link/fragment.ts')
  const found = buildIn(address.trim())
  if (!found) return { ok: false, says: 'This address carries no build. A link to a build has “#build=” in it: paste the whole of it.' }
  const { readBuildCode } = await import('@trochoid/compute/link/buildLink.ts')
  return readBuildCode(found.code, fields)
}
