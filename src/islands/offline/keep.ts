import { base, url } from '../../url.ts'
import { notice } from './notice.ts'
import { answer, answered, megabytes, offline, words, type Edition } from './state.ts'

/** The page being read has the line for itself first; keeping the rest of the site can wait this long after it, in ms. */
const patience = 2000

const waitingWords = 'A newer version of the handbook is ready. What you have typed is kept.'
const takenWords = 'The handbook was brought up to date in another tab. Reload this page before going on.'

function offerWaiting({ waiting }: ServiceWorkerRegistration): void {
  if (!waiting || !navigator.serviceWorker.controller) return
  notice(waitingWords, [['Change to it', () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    waiting.postMessage({ type: 'SKIP_WAITING' })
  }], ['Later', () => undefined]])
}

function watchForNewer(registration: ServiceWorkerRegistration): void {
  offerWaiting(registration)
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', () => offerWaiting(registration))
  })
}

/** Resolves once a worker answers for this page. It takes over only after every file of the site has been put by. */
async function kept(): Promise<void> {
  await navigator.serviceWorker.ready
  if (navigator.serviceWorker.controller) return
  await new Promise((resolve) => navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }))
}

/** Rejects when the browser gives up putting the files by: the connection broke, one is missing, or there is no room. */
function refused({ installing }: ServiceWorkerRegistration): Promise<never> {
  return new Promise((_resolve, reject) => {
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'redundant') reject(new Error('The site could not be kept for reading offline.'))
    })
  })
}

async function register(): Promise<void> {
  const { serviceWorker } = navigator
  const registration = await serviceWorker.register(url('/sw.js'), { scope: base, updateViaCache: 'none' })
  watchForNewer(registration)
  await Promise.race([kept(), refused(registration)])
}

/** Puts the handbook by. What was put by before a connection broke is not fetched again; the next try comes with the network, or with the next page. */
export async function keepNow(): Promise<void> {
  try {
    await register()
    offline.set({ is: 'ready' })
  } catch {
    offline.set({ is: 'failed' })
    addEventListener('online', () => void keepNow(), { once: true })
  }
}

/** Takes everything that was kept off the device again, and keeps nothing from then on. Builds and what was typed stay. */
export async function removeKept(): Promise<void> {
  answer('no')
  const scope = new URL(base, location.href).href
  for (const registration of await navigator.serviceWorker.getRegistrations()) if (registration.scope === scope) await registration.unregister()
  for (const name of await caches.keys()) if (name.endsWith(scope)) await caches.delete(name)
  offline.set({ is: 'declined' })
}

/** Asked before megabytes are fetched, where the reader told the browser to save them. */
async function ask(): Promise<void> {
  offline.set({ is: 'asks' })
  const size = await fetch(url('/kept.json')).then(async (got) => megabytes((await got.json() as Edition).sent), () => 'a few MB')
  notice(`Keep the whole handbook on this device, to read it without a network? It takes ${size} of your data.`, [
    ['Keep it', () => { answer('yes'); void keepNow() }],
    ['No', () => { answer('no'); offline.set({ is: 'declined' }) }],
  ])
}

const savesData = (): boolean => (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true

/**
 * Keeps the whole site for reading without a network. `data-offline` on the root element says how far that is:
 * `ready` when every page can be opened offline, `failed` when the browser would not keep it, absent before.
 */
export function keepOffline(): void {
  const told = document.querySelector('[data-offline-words]')
  offline.watch(() => { if (told) told.textContent = words(offline.get()) })
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return offline.set({ is: 'impossible' })
  const { serviceWorker } = navigator
  if (serviceWorker.controller) serviceWorker.addEventListener('controllerchange', () => notice(takenWords, [['Reload', () => location.reload()]]))
  serviceWorker.addEventListener('message', ({ data }) => {
    const said = data as { keeping?: number; of?: number } | null
    // While a newer version is fetched, the one that is there goes on being whole.
    if (typeof said?.keeping === 'number' && offline.get().is !== 'ready') offline.set({ is: 'keeping', come: said.keeping, of: said.of ?? 0 })
  })
  const begin = () => {
    if (answered() === 'no') return offline.set({ is: 'declined' })
    if (savesData() && answered() === null && !serviceWorker.controller) return void ask()
    void keepNow()
  }
  const idle = () => setTimeout(() => (typeof requestIdleCallback === 'function' ? requestIdleCallback(begin) : begin()), patience)
  if (document.readyState === 'complete') idle()
  else addEventListener('load', idle, { once: true })
}
