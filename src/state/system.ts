import type { System } from '@trochoid/compute/quantity/write.ts'
import { load, save, type Key } from './kept.ts'
import { store, type Store } from './store.ts'

const key: Key<System> = { name: 'units', version: 1, bound: 100, read: (data) => (data === 'metric' || data === 'imperial' ? data : null) }

function first(): System {
  // Asking for a store that the browser forbids throws, even when only its type is asked: `load` alone touches it.
  if (typeof document === 'undefined') return 'metric'
  const kept = load(key)
  return kept.found === 'value' ? kept.value : 'metric'
}

/** The units the reader wants to see. */
export const system: Store<System> = store(first())
export function chooseSystem(next: System): void {
  save(key, next)
  system.set(next)
}
