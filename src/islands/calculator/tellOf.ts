import { bringUpToDate } from '../notices/bringUpToDate.ts'
import type { Linked } from './readLink.ts'

/** Says above the card what its address brought, or why nothing of it was used. */
export function tellOf({ faults, note, newer }: Linked, told: HTMLElement): void {
  told.hidden = false
  if (faults.length === 0) {
    told.textContent = 'Opened with the numbers of the address.'
    // As text, so that nothing in it can be anything else.
    if (note !== '') told.append(' The sender writes: ', Object.assign(document.createElement('q'), { textContent: note }), ' (the sender’s words, not the handbook’s)')
    return
  }
  told.textContent = `The address could not be read, and none of it was used. ${faults.join(' ')}`
  if (!newer) return
  const button = Object.assign(document.createElement('button'), { type: 'button', textContent: 'Update the handbook' })
  button.addEventListener('click', () => void bringUpToDate().then((says) => { told.textContent = says }))
  told.append(' It may have been made with a newer handbook: bring this one up to date, and it opens. ', button)
}
