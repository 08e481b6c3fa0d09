import { answer, offline } from './state.ts'
import { editionKept, megabytes } from './edition.ts'

type Choice = readonly [words: string, act: () => void]

/** A word to the reader at the foot of the window. Nothing changes under their hands until they press something. */
function notice(text: string, choices: readonly Choice[]): void {
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

export function offerWaiting(waiting: ServiceWorker): void {
  notice('A newer version of the handbook is ready. What you have typed is kept.', [['Change to it', () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    waiting.postMessage({ type: 'SKIP_WAITING' })
  }], ['Later', () => undefined]])
}

export function tellTaken(): void {
  notice('The handbook was brought up to date in another tab. Reload this page before going on.', [['Reload', () => location.reload()]])
}

/** Asked before megabytes are fetched, where the reader told the browser to save them. */
export async function ask(keepNow: () => Promise<void>): Promise<void> {
  offline.set({ is: 'asks' })
  const size = await editionKept().then(({ sent }) => megabytes(sent), () => 'a few MB')
  notice(`Keep the whole handbook on this device, to read it without a network? It takes ${size} of your data.`, [
    ['Keep it', () => { answer('yes'); void keepNow() }],
    ['No', () => { answer('no'); offline.set({ is: 'declined' }) }],
  ])
}
