import { base, url } from '../url.ts'

/** The page being read has the line for itself first; keeping the rest of the site can wait this long after it, in ms. */
const patience = 2000

const waitingWords = 'A newer version of the handbook is ready. What you have typed is kept.'
const takenWords = 'The handbook was brought up to date in another tab. Reload this page before going on.'

/** Shows the notice; nothing changes under the reader's hands until the button is pressed. */
function offer(words: string, accept: () => void): void {
  const notice = document.getElementById('newer')
  const status = notice?.querySelector('[role=status]')
  const button = notice?.querySelector('button')
  if (!notice || !status || !button) return
  notice.hidden = false
  status.textContent = words
  button.onclick = accept
}

function offerWaiting(registration: ServiceWorkerRegistration): void {
  const { waiting } = registration
  if (!waiting || !navigator.serviceWorker.controller) return
  offer(waitingWords, () => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
    waiting.postMessage({ type: 'SKIP_WAITING' })
  })
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

/** Rejects when the browser gives up putting the files by: one is missing, or there is no room. */
function refused({ installing }: ServiceWorkerRegistration): Promise<never> {
  return new Promise((_resolve, reject) => {
    installing?.addEventListener('statechange', () => {
      if (installing.state === 'redundant') reject(new Error('The site could not be kept for reading offline.'))
    })
  })
}

async function register(): Promise<void> {
  const { serviceWorker } = navigator
  if (serviceWorker.controller) {
    serviceWorker.addEventListener('controllerchange', () => offer(takenWords, () => location.reload()))
  }
  const registration = await serviceWorker.register(url('/sw.js'), { scope: base, updateViaCache: 'none' })
  watchForNewer(registration)
  await Promise.race([kept(), refused(registration)])
  document.documentElement.dataset.offline = 'ready'
}

/**
 * Keeps the whole site for reading without a network. `data-offline` on the root element says how far that is:
 * `ready` when every page can be opened offline, `failed` when the browser would not keep it, absent before.
 */
export function keepOffline(): void {
  if (import.meta.env.DEV || !('serviceWorker' in navigator)) return
  const start = () => setTimeout(() => {
    register().catch(() => { document.documentElement.dataset.offline = 'failed' })
  }, patience)
  if (document.readyState === 'complete') start()
  else addEventListener('load', start, { once: true })
}
