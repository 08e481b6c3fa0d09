type Meanings = Readonly<Record<string, readonly [term: string, meaning: string]>>
let meanings: Promise<Meanings> | undefined
const fetched = (): Promise<Meanings> => (meanings ??= fetch('words.json').then((got) => got.json() as Promise<Meanings>))

let box: HTMLElement | undefined
let of: HTMLAnchorElement | undefined

/** The box stays while the pointer is on the word or on the box, or the word has the focus; Escape puts it away. */
function place(): HTMLElement {
  if (box) return box
  box = Object.assign(document.createElement('div'), { className: 'peek', id: 'peek', hidden: true })
  box.setAttribute('role', 'tooltip')
  box.addEventListener('pointerleave', hide)
  document.body.append(box)
  addEventListener('keydown', ({ key }) => { if (key === 'Escape') hide() })
  addEventListener('pointerdown', ({ target }) => { if (target !== of && !box!.contains(target as Node)) hide() })
  return box
}
function hide(): void {
  if (!box || box.hidden) return
  box.hidden = true
  of?.removeAttribute('aria-describedby')
  of = undefined
}

/** Shows what a word means beside it. */
export async function peek(word: HTMLAnchorElement): Promise<void> {
  const found = await fetched().then((all) => all[word.hash.slice(1)], () => undefined)
  if (!found || of === word) return
  const at = place()
  of?.removeAttribute('aria-describedby')
  of = word
  const [term, meaning] = found
  at.replaceChildren(Object.assign(document.createElement('strong'), { textContent: `${term}. ` }), meaning)
  at.hidden = false
  const line = word.getClientRects()[0] ?? word.getBoundingClientRect()
  const left = Math.max(8, Math.min(line.left, document.documentElement.clientWidth - at.offsetWidth - 8))
  const below = line.bottom + at.offsetHeight + 8 < innerHeight
  at.style.left = `${left + scrollX}px`
  at.style.top = `${(below ? line.bottom : line.top - at.offsetHeight) + scrollY}px`
  word.setAttribute('aria-describedby', 'peek')
}

export const leave = (word: HTMLAnchorElement, to: EventTarget | null): void => { if (of === word && !(to instanceof Node && box?.contains(to))) hide() }
