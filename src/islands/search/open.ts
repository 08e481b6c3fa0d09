const at = () => document.querySelector<HTMLDialogElement>('dialog[data-search]')

/** Opens the search over the page. What is typed before its code is there is answered once it is. */
function open(): void {
  const dialog = at()
  // On the search's own page there is no window over it.
  if (!dialog) return document.querySelector<HTMLInputElement>('#query')?.focus()
  dialog.showModal()
  void import('./dialog.ts').then((m) => m.wakeDialog(dialog))
}

/** Search from every page: on `/`, and where its link is pressed. */
export function openSearch(): void {
  document.querySelector('[data-opens-search]')?.addEventListener('click', (event) => {
    if ((event as MouseEvent).ctrlKey || (event as MouseEvent).metaKey || !at()) return
    event.preventDefault()
    open()
  })
  addEventListener('keydown', (event) => {
    const { target, key, ctrlKey, metaKey, altKey } = event
    // A field of a closed window may still be named as the target: there is nothing to type into.
    const typing = (target as HTMLElement).closest?.('input, textarea, select, dialog[open]')
    if (key !== '/' || ctrlKey || metaKey || altKey || (typing && !typing.closest('dialog:not([open])'))) return
    event.preventDefault()
    open()
  })
}
