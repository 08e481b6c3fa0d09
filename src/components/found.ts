import { getCollection } from 'astro:content'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Entry } from '../islands/search/find.ts'
import { glossary } from '../article/terms.ts'
import { registry } from '../registry.ts'
import { inOrder } from './chapters.ts'
import { tables } from './tables/all.ts'

/** Pages that are no article and no calculator, with other words for them. */
const pages: readonly Entry[] = [
  { kind: 'page', title: 'Build sheet', url: 'build/', also: 'my car engine numbers save export import file' },
  { kind: 'page', title: 'Margins', url: 'margins/', also: 'what gives out first short tight holds weakest link report' },
  { kind: 'page', title: 'Speed sweep', url: 'sweep/', also: 'curves over rpm power torque' },
  { kind: 'page', title: 'Symptoms', url: 'symptoms/', also: 'fault trouble sign problem mistakes' },
  { kind: 'page', title: 'Checked against', url: 'checked-against/', also: 'validation proof published cases tests' },
  { kind: 'page', title: 'How far to trust this', url: 'how-far-to-trust/', also: 'accuracy confidence model leaves out error wrong' },
  { kind: 'page', title: 'Sources', url: 'sources/', also: 'references books papers bibliography' },
  { kind: 'page', title: 'Cautions', url: 'reference/cautions/', also: 'safety danger law legal' },
  { kind: 'page', title: 'Map workshop', url: 'maps/', also: 'map workshop trace bring in own turbo map' },
  { kind: 'page', title: 'Two turbochargers', url: 'turbochargers/', also: 'turbo choose size compare' },
  { kind: 'page', title: 'Chance', url: 'chance/', also: 'tolerance spread probability scatter' },
  { kind: 'page', title: 'Two builds', url: 'compare/', also: 'compare side by side difference' },
  { kind: 'page', title: 'First build in ten steps', url: 'first-build/', also: 'begin start plan path beginner checklist' },
  { kind: 'page', title: 'Before first start', url: 'before-first-start/', also: 'checklist first start fire up prime oil pressure cranking hand-over' },
  { kind: 'page', title: 'Licences', url: 'licences/', also: 'open source libraries' },
  { kind: 'page', title: 'On this device', url: 'on-this-device/', also: 'offline download without network install remove version' },
]

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
