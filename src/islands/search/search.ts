/** What the search engine answers, as far as it is used here. */
type Result = { readonly data: () => Promise<{ readonly url: string; readonly meta: { readonly title?: string }; readonly excerpt: string }> }
type Engine = { readonly options: (o: { baseUrl: string }) => Promise<void>; readonly debouncedSearch: (text: string, options?: object, wait?: number) => Promise<{ readonly results: readonly Result[] } | null> }

const most = 12
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
      const found = await (await begin()).debouncedSearch(text, {}, 150)
      if (!found) return
      const pages = await Promise.all(found.results.slice(0, most).map((r) => r.data()))
      status.textContent = found.results.length === 0 ? `Nothing was found for “${text}”.` : `${found.results.length} page${found.results.length === 1 ? '' : 's'}`
      list.replaceChildren(...pages.map(item))
    } catch { status.textContent = 'The search could not be loaded. The contents and the glossary need no search.' }
  }
  input.addEventListener('focus', () => void begin().catch(() => undefined), { once: true })
  input.addEventListener('input', () => void look())
  try { input.value = decodeURIComponent(location.hash.slice(1)) } catch { input.value = '' }
  input.focus()
  if (input.value) void look()
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
