import { fromLists, withPages, type Hit } from './answer.ts'
import { firstLists, wholeLists } from './lists.ts'
import { nearest } from './nearest.ts'
import { engineAt, inPages } from './pages.ts'
import { question } from './question.ts'
import { show, showNearest } from './show.ts'

/** The full text is asked once the typing rests for so long, in ms; titles answer every key. */
const rest = 150

/** Makes one search field live. The lists and the engine over the full text are kept for reading offline like everything else. */
export function search(root: HTMLElement, base: string, changed: (text: string) => void = () => undefined): void {
  const input = root.querySelector('input')!
  const status = root.querySelector('[role=status]')!
  const place = root.querySelector<HTMLElement>('[data-found]')!
  let turn = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  const put = (hits: readonly Hit[], whole: boolean) => {
    show(place, hits)
    root.dataset.answered = whole ? 'whole' : 'first'
    if (whole) status.textContent = `${hits.length} found. Best: ${hits[0]!.title}.`
  }
  async function full(text: string, mine: number): Promise<void> {
    const lists = await wholeLists(base)
    const hits = fromLists(text, lists, base)
    const pages = await inPages(base, question(text, lists.words), lists.words).catch(() => null)
    if (mine !== turn) return
    const all = pages ? withPages(hits, pages, lists, base) : hits
    if (all.length > 0) put(all, true)
    else {
      showNearest(place, nearest(text, lists), base)
      root.dataset.answered = 'whole'
      status.textContent = `Nothing was found for “${text}”.`
    }
  }
  async function look(): Promise<void> {
    const mine = ++turn
    const text = input.value.trim()
    changed(text)
    clearTimeout(timer)
    delete root.dataset.answered
    if (text === '') { place.replaceChildren(); status.textContent = ''; return }
    const failed = () => { if (mine === turn) status.textContent = 'The search could not be loaded. The contents and the glossary need no search.' }
    timer = setTimeout(() => void full(text, mine).catch(failed), rest)
    const hits = fromLists(input.value, await firstLists(base), base)
    if (mine === turn && root.dataset.answered !== 'whole' && hits.length > 0) put(hits, false)
  }

  input.addEventListener('input', () => void look().catch(() => undefined))
  root.addEventListener('keydown', (event) => move(event, input, place))
  void firstLists(base).then(() => Promise.all([wholeLists(base), engineAt(base)])).catch(() => undefined)
  if (input.value) void look().catch(() => undefined)
}

/** Down and up go through what was found, and back to the field; Enter in the field opens the best. */
function move(event: KeyboardEvent, input: HTMLInputElement, place: HTMLElement): void {
  const links = [...place.querySelectorAll('a')]
  const at = links.indexOf(document.activeElement as HTMLAnchorElement)
  if (event.key === 'Enter' && event.target === input) { links[0]?.click(); return }
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return
  event.preventDefault()
  const next = at + (event.key === 'ArrowDown' ? 1 : -1)
  if (next < 0) input.focus()
  else links[Math.min(next, links.length - 1)]?.focus()
}
