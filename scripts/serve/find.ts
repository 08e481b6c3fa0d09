import { stat } from 'node:fs/promises'
import { join, normalize, sep } from 'node:path'

/** What a path of the site leads to. */
export type Found = { file: string } | { redirect: string } | undefined

/**
 * Finds the file for a path below the base, as plain file hosts do: a folder answers with its `index.html`,
 * a folder asked for without the last slash leads to the one with it.
 */
export async function find(dir: string, path: string): Promise<Found> {
  const file = normalize(join(dir, path))
  if (file !== dir && !file.startsWith(dir + sep)) return undefined
  const at = await stat(file).catch(() => undefined)
  if (at?.isFile() && !path.endsWith('/')) return { file }
  if (!at?.isDirectory()) return undefined
  const index = join(file, 'index.html')
  if (!(await stat(index).catch(() => undefined))?.isFile()) return undefined
  return path.endsWith('/') ? { file: index } : { redirect: `${path}/` }
}
