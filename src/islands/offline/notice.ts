export type Choice = readonly [words: string, act: () => void]

/** A word to the reader at the foot of the window. Nothing changes under their hands until they press something. */
export function notice(text: string, choices: readonly Choice[]): void {
  const place = document.getElementById('newer')
  const status = place?.querySelector('[role=status]')
  const row = place?.querySelector('p')
  if (!place || !status || !row) return
  for (const button of place.querySelectorAll('button')) button.remove()
  for (const [words, act] of choices) {
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: words })
    button.addEventListener('click', () => { place.hidden = true; act() })
    row.append(' ', button)
  }
  place.hidden = false
  status.textContent = text
}
