import { base } from '../../url.ts'
import { editionKept, megabytes } from './edition.ts'
import { keepNow } from './keep.ts'
import { answer, offline, type Offline } from './state.ts'

const words = (now: Offline): string => ({
  'not yet': 'Reading without a network',
  'asks': 'Not kept on this device yet',
  'keeping': now.is === 'keeping' ? `Being put on this device, ${now.come} of ${now.of}` : '',
  'ready': 'Kept on this device',
  'failed': 'Not all of it is on this device yet',
  'declined': 'Not kept on this device',
  'impossible': 'This browser keeps no pages',
})[now.is]

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
    const { edition, version, files, stored, sent } = await editionKept()
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
  navigator.serviceWorker?.addEventListener('message', ({ data }) => {
    const said = data as { keeping?: number; of?: number } | null
    // While a newer version is fetched, the one that is there goes on being whole.
    if (typeof said?.keeping === 'number' && offline.get().is !== 'ready') offline.set({ is: 'keeping', come: said.keeping, of: said.of ?? 0 })
  })
  offline.watch(show)
  show()
  tell().catch(() => { part('size').textContent = 'Not known without a network.' })
}

/** Takes everything that was kept off the device again, and keeps nothing from then on. Builds and what was typed stay. */
async function removeKept(): Promise<void> {
  answer('no')
  const scope = new URL(base, location.href).href
  for (const registration of await navigator.serviceWorker.getRegistrations()) if (registration.scope === scope) await registration.unregister()
  for (const name of await caches.keys()) if (name.endsWith(scope)) await caches.delete(name)
  offline.set({ is: 'declined' })
}
