import { forget, load, save, type Key } from '../../state/kept.ts'
import { store, type Store } from '../../state/store.ts'

/** How far the handbook is kept for reading without a network. `ready` stands only once every file of it is there. */
export type Offline =
  | { readonly is: 'not yet' | 'asks' | 'ready' | 'failed' | 'declined' | 'impossible' }
  | { readonly is: 'keeping'; /** Packs of the handbook that came, and how many there are. */ readonly come: number; readonly of: number }

export const offline: Store<Offline> = store<Offline>({ is: 'not yet' })
if (typeof document !== 'undefined') {
  offline.watch(() => {
    const { is } = offline.get()
    if (is === 'ready' || is === 'failed') document.documentElement.dataset.offline = is
    else delete document.documentElement.dataset.offline
  })
}

const key: Key<'yes' | 'no'> = { name: 'offline', version: 1, bound: 100, read: (data) => (data === 'yes' || data === 'no' ? data : null) }

/** What the reader answered when asked whether to keep the handbook, or null where they were not. */
export function answered(): 'yes' | 'no' | null {
  const found = load(key)
  return found.found === 'value' ? found.value : null
}
export function answer(said: 'yes' | 'no' | null): void {
  if (said === null) forget(key)
  else save(key, said)
}
