import { base, url } from '../../url.ts'
import { answered, offline } from './state.ts'

/** The page being read has the line for itself first; keeping the rest of the site can wait this long after it, in ms. */
const patience = 2000

/** What is seldom said is loaded when it is. */
const notices = () => import('./notices.ts')

function offerWaiting({ waiting }: ServiceWorkerRegistration): void {
  if (waiting && navigator.serviceWorker.controller) void notices().then((m) => m.offerWaiting(waiting))
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

const savesData = (): boolean => (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true

/**
 * Keeps the whole site for reading without a network. `data-offline` on the root element says how far that is:
 * `ready` when every page can be opened offline, `failed` when the browser would not keep it, absent before.
 */
export function keepOffline(): void {
  const told = document.querySelector('[data-offline-words]')
  offline.watch(() => { if (told && offline.get().is === 'ready') told.textContent = 'Kept on this device' })
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return offline.set({ is: 'impossible' })
  const { serviceWorker } = navigator
  if (serviceWorker.controller) serviceWorker.addEventListener('controllerchange', () => void notices().then((m) => m.tellTaken()))
  const begin = () => {
    if (answered() === 'no') return offline.set({ is: 'declined' })
    if (savesData() && answered() === null && !serviceWorker.controller) return void notices().then((m) => m.ask(keepNow))
    void keepNow()
  }
  const idle = () => setTimeout(() => (typeof requestIdleCallback === 'function' ? requestIdleCallback(begin) : begin()), patience)
  if (document.readyState === 'complete') idle()
  else addEventListener('load', idle, { once: true })
}
