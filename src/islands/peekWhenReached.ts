const load = () => import('./peek.ts')
let last: string | undefined

/** A word of the glossary tells its meaning to a resting pointer, to the focus, and to a first tap; a second tap, or Enter, follows it. */
export function peekWhenReached(): void {
  const wordOf = (event: Event) => (event.target as Element | null)?.closest?.<HTMLAnchorElement>('a.term') ?? null
  const show = (event: Event) => { const word = wordOf(event); if (word) void load().then((m) => m.peek(word)) }
  const leave = (event: MouseEvent | FocusEvent) => { const word = wordOf(event); if (word) void load().then((m) => m.leave(word, event.relatedTarget)) }
  const main = document.querySelector('main')
  main?.addEventListener('pointerdown', ({ pointerType }) => { last = pointerType })
  main?.addEventListener('mouseover', show)
  main?.addEventListener('focusin', show)
  main?.addEventListener('mouseout', leave)
  main?.addEventListener('focusout', leave)
  main?.addEventListener('click', (event) => {
    const word = wordOf(event)
    // A mouse and a keyboard have had their peek before they press.
    if (!word || last !== 'touch' || word.dataset.tapped !== undefined) return
    event.preventDefault()
    for (const other of document.querySelectorAll<HTMLElement>('a.term[data-tapped]')) delete other.dataset.tapped
    word.dataset.tapped = ''
    show(event)
  })
}
