/** One value that can be watched. */
export type Store<T> = { readonly get: () => T; readonly set: (next: T) => void; readonly watch: (told: () => void) => () => void }

export function store<T>(first: T): Store<T> {
  let value = first
  const watchers = new Set<() => void>()
  return {
    get: () => value,
    set(next) { if (next !== value) { value = next; for (const told of [...watchers]) told() } },
    watch(told) { watchers.add(told); return () => { watchers.delete(told) } },
  }
}
