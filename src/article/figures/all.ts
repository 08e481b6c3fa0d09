import type { AnyFigure } from './figure.ts'

/** Every figure by its id, the name of its file: loaded when asked for. */
const files = import.meta.glob<{ default: AnyFigure }>('./*.tsx')

export async function loadFigure(id: string): Promise<AnyFigure> {
  const load = files[`./${id}.tsx`]
  if (!load) throw new Error(`There is no figure ${id}: ${Object.keys(files).map((name) => name.slice(2, -4)).join(', ')}.`)
  return (await load()).default
}
