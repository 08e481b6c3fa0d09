import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { root } from '../root.ts'

/** One thing to be found by itself: a word of the glossary, a symptom. */
export type SearchEntry = { readonly url: string; readonly title: string; readonly text: string }

/** Long lists are searched entry by entry, so that a question ends at its answer and not at the top of a list. */
export async function searchEntries(built: string): Promise<readonly SearchEntry[]> {
  const glossary = await readFile(join(built, 'reference', 'glossary', 'index.html'), 'utf8')
  const symptoms = await readFile(join(built, 'symptoms', 'index.html'), 'utf8')
  // Each entry is a file that a kept copy must hold. Quantities are left to the pages that use them; only written-out words stand alone.
  const written = new Set((await readdir(join(root, 'content', 'glossary'))).map((file) => file.replace(/\.json$/, '')))
  const words = [...glossary.matchAll(/<dt id="([^"]+)"[^>]*>(.*?)<\/dt>\s*<dd[^>]*>(.*?)<\/dd>/gs)].map(([, id, term, meaning]): SearchEntry => ({
    url: `/reference/glossary/#${id}`, title: plain(term!.replace(/<span.*/s, '')), text: `${plain(term!)}. ${plain(meaning!)}`,
  })).filter(({ url }) => written.has(url.slice(url.indexOf('#') + 1)))
  const signs = [...symptoms.matchAll(/<tr[^>]*><th scope="row"[^>]*>(.*?)<\/th><td[^>]*>(.*?)<\/td><td[^>]*>(.*?)<\/td><td[^>]*><a href="([^"]*\/articles\/[^"]+)"/gs)].map(([, sign, cause, remedy, address]): SearchEntry => ({
    url: address!.slice(address!.indexOf('/articles/')), title: plain(sign!), text: `${plain(sign!)}. ${plain(cause!)} ${plain(remedy!)}`,
  }))
  if (words.length === 0 || signs.length === 0) throw new Error('The search found no words in the glossary, or no symptoms: have their pages changed?')
  return [...words, ...signs]
}

const marks: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': '\'' }
const plain = (html: string): string => html.replace(/<[^>]+>/g, ' ').replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => marks[name]!).replace(/\s+/g, ' ').replace(/ ([.,;:])/g, '$1').trim()
