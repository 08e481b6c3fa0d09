import { getCollection } from 'astro:content'
import { quantityOf } from '@trochoid/compute/calculation/calculation.ts'
import { marked, type Entry } from '../article/terms.ts'
import { registry } from '../registry.ts'

export type Used = { readonly title: string; readonly path: string }
/** Beyond this many calculators a list tells nothing: the quantity is used nearly everywhere. */
const many = 8

/** Where a word of the glossary is used: articles that mark it, calculators that take or give its quantity. */
export async function whereUsed(): Promise<(entry: Entry) => readonly Used[]> {
  const inArticles = new Map<string, Used[]>()
  for (const { id, data, body = '' } of await getCollection('articles')) {
    for (const entry of await marked(body)) {
      const list = inArticles.get(entry.id) ?? []
      if (!list.some(({ path }) => path === `/articles/${id}/`)) list.push({ title: data.title, path: `/articles/${id}/` })
      inArticles.set(entry.id, list)
    }
  }
  const byQuantity = new Map<string, Used[]>()
  for (const c of registry.calculations.values()) {
    const shapes = [...Object.values(c.in).map(({ shape }) => shape), ...Object.values(c.out).map(quantityOf)]
    for (const id of new Set(shapes.map((shape) => shape.id))) byQuantity.set(id, [...(byQuantity.get(id) ?? []), { title: c.title, path: `/calculators/${c.id}/` }])
  }
  return (entry) => {
    const calculators = entry.quantity === undefined ? [] : byQuantity.get(entry.quantity) ?? []
    return [...(inArticles.get(entry.id) ?? []), ...calculators.slice(0, many)]
  }
}
