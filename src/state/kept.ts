/**
 * What the browser keeps for the reader. Every key states its bound; a browser without room, or that forbids keeping, is
 * told of, never stumbled over.
 */
export type Key<T> = { readonly name: string; readonly version: number; /** Longest text, in characters. */ readonly bound: number; readonly read: (data: unknown) => T | null }
export type Loaded<T> = { readonly found: 'none' | 'blocked' } | { readonly found: 'value'; readonly value: T } | { readonly found: 'damaged'; readonly text: string }
export type Saved = 'saved' | 'full' | 'blocked' | 'too large'

const address = (key: Key<unknown>): string => `trochoid.${key.name}`
/** Where what could not be read is put: the second, third… time beside the first, never over it. */
export const setAside = (key: Key<unknown>, time = 1): string => `${address(key)}.set-aside${time === 1 ? '' : `-${time}`}`
const mostSetAside = 9

export function load<T>(key: Key<T>): Loaded<T> {
  let text: string | null
  try { text = localStorage.getItem(address(key)) } catch { return { found: 'blocked' } }
  if (text === null) return { found: 'none' }
  const value = parsed(text, key)
  if (value !== null) return { found: 'value', value }
  // What cannot be read is put aside, so that the reader can still fetch it and nothing writes over it.
  try {
    for (let time = 1; time <= mostSetAside; time++) if (localStorage.getItem(setAside(key, time)) === null) {
      localStorage.setItem(setAside(key, time), text)
      localStorage.removeItem(address(key))
      break
    }
  } catch { /* it stays where it is */ }
  return { found: 'damaged', text }
}

function parsed<T>(text: string, key: Key<T>): T | null {
  try {
    const kept = JSON.parse(text) as { version?: unknown; value?: unknown }
    return kept.version === key.version ? key.read(kept.value) : null
  } catch { return null }
}

export function save<T>(key: Key<T>, value: T): Saved {
  const text = JSON.stringify({ version: key.version, value })
  if (text.length > key.bound) return 'too large'
  try { localStorage.setItem(address(key), text); return 'saved' } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked'
  }
}
export function forget(key: Key<unknown>): void { try { localStorage.removeItem(address(key)) } catch { /* nothing was kept */ } }
/** Calls back when another tab writes this key. */
export function fromOtherTabs(key: Key<unknown>, told: () => void): void {
  if (typeof addEventListener === 'function') addEventListener('storage', (event) => { if (event.key === address(key) || event.key === null) told() })
}
