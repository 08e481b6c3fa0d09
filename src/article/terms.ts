import { getCollection } from 'astro:content'
import { registry } from '../registry.ts'

export type Entry = { readonly id: string; readonly term: string; readonly meaning: string; readonly also: readonly string[]; readonly measure?: string; readonly quantity?: string; readonly article?: string }

/** The glossary: its own entries, and every quantity with the words its discipline gives it. */
export async function glossary(): Promise<readonly Entry[]> {
  const own = (await getCollection('glossary')).map(({ id, data }): Entry => ({ id, term: data.term, meaning: data.meaning, also: data.also, ...(data.quantity && { quantity: quantityNamed(id, data.quantity), ...measureOf(data.quantity) }), ...(data.article && { article: data.article.id }) }))
  const taken = new Set(own.map(({ id }) => id))
  const quantities = [...registry.quantities].filter(([id]) => !taken.has(id)).map(([id, { quantity, words }]): Entry => ({
    id, term: quantity.name, meaning: words?.means ?? '', also: [], quantity: id, ...(words && { measure: words.measure }),
  }))
  return [...own, ...quantities].sort((a, b) => a.term.localeCompare(b.term, 'en'))
}

function measureOf(id: string): { readonly measure?: string } {
  const measure = registry.quantities.get(id)?.words?.measure
  return measure ? { measure } : {}
}

function quantityNamed(entry: string, id: string): string {
  if (!registry.quantities.has(id)) throw new Error(`The glossary's ${entry} names the quantity ${id}, which there is not.`)
  return id
}

/** The entry that a word in a text means: by its term, another spelling, or its plural. */
export async function entryFor(word: string): Promise<Entry | undefined> {
  const plain = (text: string) => text.trim().toLowerCase().replace(/[‐‑-]/g, ' ').replace(/\s+/g, ' ')
  const wanted = plain(word)
  const all = await glossary()
  const exact = (text: string) => all.find(({ id, term, also }) => plain(term) === text || plain(id) === text || also.some((a) => plain(a) === text))
  return exact(wanted) ?? (wanted.endsWith('s') ? exact(wanted.slice(0, -1)) : undefined)
}

/** The entries of the words that an article marks, in the order of their first mark. */
export async function marked(body: string): Promise<readonly Entry[]> {
  const found = await Promise.all([...body.matchAll(/<Term(?: of="([^"]+)")?>([^<]+)<\/Term>/g)].map(([, of, text]) => entryFor(of ?? text!)))
  return [...new Map(found.flatMap((entry) => (entry ? [[entry.id, entry] as const] : []))).values()]
}
