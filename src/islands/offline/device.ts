import { url } from '../../url.ts'
import { keepNow, removeKept } from './keep.ts'
import { answer, megabytes, offline, words, type Edition } from './state.ts'

/** The page that tells what of the handbook is on this device, and keeps or removes it. */
export function device(): void {
  const root = document.querySelector<HTMLElement>('[data-device]')
  if (!root) return
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part=${name}]`)!
  const button = (name: string) => root.querySelector<HTMLButtonElement>(`[data-act=${name}]`)!
  const show = () => {
    const now = offline.get()
    part('state').textContent = now.is === 'not yet' ? 'Looking…' : `${words(now)}.`
    button('keep').hidden = !['asks', 'failed', 'declined'].includes(now.is)
    button('remove').hidden = now.is !== 'ready' && now.is !== 'failed'
  }
  const tell = async () => {
    const { edition, version, files, stored, sent } = await (await fetch(url('/kept.json'))).json() as Edition
    part('size').textContent = `${files} files, ${megabytes(stored)} on the device, fetched as about ${megabytes(sent)}.`
    part('version').textContent = `${edition} (${version})`
  }
  button('keep').addEventListener('click', () => {
    answer('yes')
    // Asked in the same breath: that the browser does not clear it when room is short.
    void navigator.storage?.persist?.()
    offline.set({ is: 'keeping', come: 0, of: 1 })
    void keepNow()
  })
  button('remove').addEventListener('click', () => void removeKept())
  // The button that was pressed goes away: the focus goes to what became of it.
  for (const name of ['keep', 'remove']) button(name).addEventListener('click', () => part('state').focus())
  offline.watch(show)
  show()
  tell().catch(() => { part('size').textContent = 'Not known without a network.' })
}
