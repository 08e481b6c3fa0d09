import { base } from '../../url.ts'
import { search } from './search.ts'

/** The search in its window over a page. */
export function wakeDialog(dialog: HTMLDialogElement): void {
  if (dialog.dataset.live !== undefined) return
  dialog.dataset.live = ''
  dialog.querySelector('button')!.addEventListener('click', () => dialog.close())
  // A search field would take the key for itself, to empty itself.
  dialog.addEventListener('keydown', (event) => { if (event.key === 'Escape') { event.preventDefault(); dialog.close() } })
  // A link to a place on this very page would else stay behind the window.
  dialog.addEventListener('click', ({ target }) => { if ((target as Element).closest('a')) dialog.close() })
  search(dialog, base)
}
