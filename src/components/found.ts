import { getCollection } from 'astro:content'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Entry } from '../islands/search/find.ts'
import { glossary } from '../article/terms.ts'
import { registry } from '../registry.ts'
import { inOrder } from './chapters.ts'
import { pages } from './foundPages.ts'
import { tables } from './tables/all.ts'

/** What the first key is answered from: titles, and other words for the same things. */
export async function titles(): Promise<readonly Entry[]> {
  const extra = new Map((await getCollection('search')).flatMap(({ data }) => Object.entries(data.also)))
  const unused = new Set(extra.keys())
  const add = (entry: Entry): Entry => {
    const more = extra.get(entry.url)
    unused.delete(entry.url)
    const also = [entry.also, more].filter(Boolean).join(' ')
    return also ? { ...entry, also } : entry
  }
  const all = [
    ...(await inOrder()).map(({ id, data }): Entry => ({ kind: 'article', title: data.title, url: `articles/${id}/` })),
    ...[...registry.calculations.values()].map((c): Entry => ({ kind: 'calculator', title: c.title, url: `calculators/${c.id}/` })),
    ...tables.map(({ id, title, also }): Entry => ({ kind: 'table', title, url: `tables/${id}/`, also })),
    ...(await getCollection('glossary')).map(({ id, data }): Entry => ({ kind: 'glossary', title: data.term, url: `reference/glossary/#${id}`, ...(data.also.length > 0 && { also: data.also.join(', ') }) })),
    ...pages,
  ].map(add)
  if (unused.size > 0) throw new Error(`content/search has words for pages that there are not: ${[...unused].join(', ')}`)
  return all
}

/** What is found beside that: what each says, and every quantity and symptom. */
export async function rest(): Promise<{ readonly says: Readonly<Record<string, string>>; readonly entries: readonly Entry[] }> {
  const articles = await inOrder()
  const own = new Set((await getCollection('glossary')).map(({ id }) => id))
  const says = [
    ...articles.map(({ id, data }) => [`articles/${id}/`, data.answer]),
    ...[...registry.calculations.values()].map((c) => [`calculators/${c.id}/`, c.asks]),
    ...tables.map(({ id, says }) => [`tables/${id}/`, says]),
    ...(await glossary()).filter(({ id }) => own.has(id)).map(({ id, meaning }) => [`reference/glossary/#${id}`, meaning]),
  ] as const
  const quantities = [...registry.quantities.values()].filter(({ quantity }) => !own.has(quantity.id)).map(({ quantity, words, folder }): Entry => ({
    kind: 'quantity', title: quantity.name, url: `reference/${folder}/#${quantity.id}`, ...(isQuantity(quantity) && quantity.symbol && { also: quantity.symbol.replace(/[{}\\_^]/g, '') }), text: words?.means ?? '',
  }))
  const symptoms = articles.flatMap(({ id, data }) => data.mistakes.map((m): Entry => ({ kind: 'symptom', title: m.sign, url: `articles/${id}/#mistakes`, text: `${m.cause} ${m.remedy}` })))
  return { says: Object.fromEntries(says), entries: [...quantities, ...symptoms] }
}
