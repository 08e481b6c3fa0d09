/** How long a newer version may take to be put by, in ms. */
const patience = 60_000

/** Fetches a newer version and reloads the page with it; otherwise says why it could not. */
export async function bringUpToDate(): Promise<string> {
  const registration = 'serviceWorker' in navigator ? await navigator.serviceWorker.getRegistration() : undefined
  // Nothing is kept here for reading offline: the page came from the host, and so will a newer one.
  if (!registration) { location.reload(); return 'Loading the page again…' }
  try { await registration.update() } catch { return 'The handbook’s address cannot be reached just now. Try again when there is a connection.' }
  const waiting = registration.waiting ?? await installed(registration.installing)
  if (!waiting) return 'No newer version was found: this is the newest that is published here.'
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true })
  waiting.postMessage({ type: 'SKIP_WAITING' })
  return 'Changing to the newer version…'
}

const installed = (worker: ServiceWorker | null): Promise<ServiceWorker | null> => new Promise((done) => {
  if (!worker) return done(null)
  setTimeout(() => done(null), patience)
  worker.addEventListener('statechange', () => { if (worker.state === 'installed') done(worker); else if (worker.state === 'redundant') done(null) })
})
