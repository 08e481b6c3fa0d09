/**
 * What older build files need before they can be read as the present version: one step for each version that was ever published.
 * `migrations[n]` turns a document of version n into one of version n + 1. A field that is renamed or changes its meaning gets a new version.
 */
export type Document = Readonly<Record<string, unknown>>
export const present = 1
export const migrations: Readonly<Record<number, (document: Document) => Document>> = {}

/** Brings a document of an older version forward, step by step. Returns null where a step is missing. */
export function migrated(document: Document, steps = migrations, to = present): Document | null {
  let at = document['version']
  let now = document
  while (typeof at === 'number' && at < to) {
    const step = steps[at]
    if (!step) return null
    now = { ...step(now), version: ++at }
  }
  return now
}
