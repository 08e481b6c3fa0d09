import { redo, undo } from '../../state/edit.ts'
import { told } from './told.ts'

/** Ctrl+Z and Ctrl+Shift+Z for the sheet. While the text of a field is being edited, both belong to that text. */
export function undoByKeys(): void {
  let edited: EventTarget | null = null
  addEventListener('input', ({ target }) => { edited = target instanceof HTMLSelectElement ? null : target })
  addEventListener('focusout', () => { edited = null })
  addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z' || (edited !== null && edited === event.target)) return
    event.preventDefault()
    if (event.shiftKey) redo()
    else undo()
    told.set(event.shiftKey ? 'Done again.' : 'Taken back.')
  })
}
