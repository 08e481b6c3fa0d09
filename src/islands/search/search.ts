import { question, type Question } from './question.ts'

/** What the search engine answers, as far as it is used here. */
type Result = { readonly id: string; readonly data: () => Promise<{ readonly url: string; readonly meta: { readonly title?: string }; readonly excerpt: string }> }
type Engine = { readonly search: (text: string) => Promise<{ readonly results: readonly Result[] }>; readonly debouncedSearch: (text: string, options?: object, wait?: number) => Promise<{ readonly results: readonly Result[] } | null> }

const most = 12
/** With fewer than so many that hold every word, those that hold most of them are shown too. */
const few = 6
let engine: Promise<Engine> | undefined

/** Search on its own page. The engine and its index are kept for reading offline like everything else. */
export function searchHere(): void {
  const root = document.querySelector<HTMLElement>('[data-search]')
  const input = root?.querySelector('input')
  const status = root?.querySelector('[role=status]')
  const list = root?.querySelector('ol')
  if (!root || !input || !status || !list) return
  const begin = () => (engine ??= import(/* @vite-ignore */ root.dataset.engine!) as Promise<Engine>)
  const look = async () => {
    const text = input.value.trim()
    history.replaceState(null, '', text ? `#${encodeURIComponent(text)}` : location.pathname)
    if (text === '') { list.replaceChildren(); status.textContent = ''; return }
    try {
      const engine = await begin()
      const asked = question(text)
      const found = await engine.debouncedSearch(asked.all, {}, 150)
      if (!found) return
      const results = found.results.length < few ? [...found.results, ...(await nearly(engine, asked, found.results))] : found.results
      if (input.value.trim() !== text) return
      const pages = await Promise.all(results.slice(0, most).map((r) => r.data()))
      status.textContent = results.length === 0 ? `Nothing was found for “${text}”.` : results.length > most ? `The best ${most} of ${results.length}` : `${results.length} found`
      list.replaceChildren(...pages.map(item))
    } catch { status.textContent = 'The search could not be loaded. The contents and the glossary need no search.' }
  }
  input.addEventListener('focus', () => void begin().catch(() => undefined), { once: true })
  input.addEventListener('input', () => void look())
  try { input.value = decodeURIComponent(location.hash.slice(1)) } catch { input.value = '' }
  input.focus()
  if (input.value) void look()
}

/** What holds some of the words, most words first, the engine's own order among equals. */
async function nearly(engine: Engine, { words }: Question, before: readonly Result[]): Promise<readonly Result[]> {
  if (words.length < 2) return []
  const held = new Map<string, { readonly of: Result; readonly rank: number }>()
  for (const { results } of await Promise.all(words.map((word) => engine.search(word)))) {
    // A word that few hold tells more than one that many do; a page on which it stands first more than one far down.
    results.forEach((of, i) => { held.set(of.id, { of, rank: (held.get(of.id)?.rank ?? 0) + 1 / Math.log2(2 + results.length) + 1 / (8 + i) }) })
  }
  for (const { id } of before) held.delete(id)
  return [...held.values()].sort((a, b) => b.rank - a.rank).map(({ of }) => of)
}

function item({ url, meta, excerpt }: Awaited<ReturnType<Result['data']>>): HTMLLIElement {
  const link = Object.assign(document.createElement('a'), { href: url, textContent: meta.title ?? url })
  const text = document.createElement('p')
  text.className = 'small'
  text.append(...marked(excerpt))
  const entry = document.createElement('li')
  entry.append(link, text)
  return entry
}
/** The excerpt with the words found set off, built of text alone: no markup of the index reaches the page. */
function marked(excerpt: string): (string | HTMLElement)[] {
  const plain = (text: string) => text.replace(/<[^>]*>/g, '').replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ({ 'amp': '&', 'lt': '<', 'gt': '>', 'quot': '"', '#39': '\'' })[name] ?? '')
  return excerpt.split(/(<mark>.*?<\/mark>)/).map((part) => (part.startsWith('<mark>') ? Object.assign(document.createElement('mark'), { textContent: plain(part) }) : plain(part)))
}
