import type { Kind } from './find.ts'
import type { Asked } from './question.ts'
import { parts, split, stem, type Words } from './words.ts'

/** What the engine over the full text answers, as far as it is used here. */
type Part = { readonly url: string; readonly title: string; readonly excerpt: string; readonly locations?: readonly number[] }
type Data = { readonly url: string; readonly meta: { readonly title?: string }; readonly excerpt: string; readonly sub_results: readonly Part[] }
type Result = { readonly id: string; readonly data: () => Promise<Data> }
type Engine = { readonly search: (text: string) => Promise<{ readonly results: readonly Result[] }> }
/** A page that holds what was asked, opened where it does. */
export type PageFound = { readonly page: string; readonly url: string; readonly title: string; readonly excerpt: string; readonly kind: Kind }

const most = 10
/** With fewer than so many that hold every word, those that hold most of them are shown too. */
const few = 6

let engine: Promise<Engine> | undefined
export const engineAt = (base: string): Promise<Engine> => (engine ??= import(/* @vite-ignore */ `${base}pagefind/pagefind.js`) as Promise<Engine>)

/** The full text, best page first. */
export async function inPages(base: string, asked: readonly Asked[], { spelt }: Words): Promise<readonly PageFound[]> {
  const { search } = await engineAt(base)
  const ways = asked.filter(({ helps }) => !helps).map(({ typed, ways }) => (ways.length > 1 ? ways.at(-1)!.join(' ') : typed))
  const { results } = await search(ways.join(' '))
  const all = results.length < few && ways.length > 1 ? [...results, ...await nearly(search, ways, results)] : results
  const wanted = asked.flatMap(({ ways }) => ways.flat())
  return (await Promise.all(all.slice(0, most).map((result) => result.data()))).filter(({ excerpt }) => holds(excerpt, wanted, spelt)).map((data) => place(base, data))
}

/** Where no page holds a word, the engine shortens it until one does: `qqzz` would find everything with a q. */
function holds(excerpt: string, wanted: readonly string[], spelt: Words['spelt']): boolean {
  const marked = [...excerpt.matchAll(/<mark>(.*?)<\/mark>/g)].flatMap(([, text]) => split(text!).flatMap(parts).map((word) => stem(word, spelt)))
  return marked.some((word) => wanted.some((one) => word.slice(0, 4) === one.slice(0, 4)))
}

/** What holds some of the words: a word that few pages hold tells more than one that many do, a page on which it stands first more than one far down. */
async function nearly(search: Engine['search'], ways: readonly string[], before: readonly Result[]): Promise<readonly Result[]> {
  const held = new Map<string, { readonly of: Result; readonly rank: number }>()
  for (const { results } of await Promise.all(ways.map((words) => search(words)))) {
    results.forEach((of, i) => held.set(of.id, { of, rank: (held.get(of.id)?.rank ?? 0) + 1 / Math.log2(2 + results.length) + 1 / (8 + i) }))
  }
  for (const { id } of before) held.delete(id)
  return [...held.values()].sort((a, b) => b.rank - a.rank).map(({ of }) => of)
}

function place(base: string, { url, meta, excerpt, sub_results: parts }: Data): PageFound {
  const page = url.slice(base.length)
  const best = [...parts].sort((a, b) => (b.locations?.length ?? 0) - (a.locations?.length ?? 0))[0]
  const title = meta.title ?? page
  const within = best && best.url !== url && best.title !== title
  const kind = page.startsWith('articles/') ? 'article' : page.startsWith('calculators/') ? 'calculator' : page.startsWith('tables/') ? 'table' : page.startsWith('reference/') ? 'quantity' : 'page'
  return { page, url: within ? best.url : url, title: within ? `${title}: ${best.title}` : title, excerpt: within ? best.excerpt : excerpt, kind }
}
