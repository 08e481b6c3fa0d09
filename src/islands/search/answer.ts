import { find, type Found, type Kind } from './find.ts'
import type { Lists } from './lists.ts'
import type { PageFound } from './pages.ts'
import { question } from './question.ts'

/** One line of the answer. */
export type Hit = { readonly kind: Kind; readonly title: string; readonly url: string; readonly says: string; readonly score: number }

/** What full text is worth beside titles: its first page about as much as a title that holds half of what is asked. */
const fullText = 0.5
const together = 0.3
const most = 24

/** What the lists find alone. */
export const fromLists = (text: string, { words, index }: Lists, base: string): readonly Hit[] => onceEach(find(index, question(text, words))).slice(0, most).map((found) => hit(found, base))

/** What the lists and the full text find together: a page that both name comes before one that only one does. */
export function withPages(hits: readonly Hit[], pages: readonly PageFound[], { index }: Lists, base: string): readonly Hit[] {
  const named = new Map(index.entries.map(({ url, title }) => [url, title]))
  const byPage = new Map(pages.map((found, rank) => [found.page, { found, worth: 1 / (1 + 0.25 * rank) }]))
  const joined = hits.map((one) => {
    const page = one.url.slice(base.length)
    const text = byPage.get(page)
    if (!text) return one
    byPage.delete(page)
    return { ...one, url: text.found.url, score: one.score + together * text.worth, says: text.found.excerpt || one.says }
  })
  const others = [...byPage.values()].map(({ found, worth }): Hit => ({ kind: found.kind, title: named.get(found.page) ?? found.title, url: found.url, says: found.excerpt, score: fullText * worth }))
  return [...joined, ...others].sort((a, b) => b.score - a.score).slice(0, most)
}

const hit = ({ entry, score }: Found, base: string): Hit => ({ kind: entry.kind, title: entry.title, url: base + entry.url, says: entry.text ?? '', score })

/** Several signs of one article lead to the same table: the one that fits best stands for them. */
function onceEach(found: readonly Found[]): readonly Found[] {
  const seen = new Set<string>()
  return found.filter(({ entry: { url } }) => !seen.has(url) && seen.add(url))
}
