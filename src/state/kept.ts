/**
 * What the browser keeps for the reader. Every key states its version and its bound; a browser without room, or that forbids
 * keeping, is told of, never stumbled over.
 */
export type Key<T> = {
  readonly name: string
  readonly version: number
  /** Longest text, in characters. */
  readonly bound: number
  readonly read: (data: unknown) => T | null
  /** For this tab alone, until it is closed. */
  readonly tab?: true
}
export type Loaded<T> =
  | { readonly found: 'none' | 'blocked' }
  /** `sound`: just as this handbook wrote it; otherwise some hand or program was there in between. */
  | { readonly found: 'value'; readonly value: T; readonly sound: boolean }
  | { readonly found: 'damaged'; readonly text: string }
export type Saved = 'saved' | 'full' | 'blocked' | 'too large'
type Named = Pick<Key<unknown>, 'name' | 'tab'>

export const before = 'trochoid.'
export const aside = '.set-aside'
export const address = ({ name }: Named): string => before + name
const place = ({ tab }: Named): Storage => (tab ? sessionStorage : localStorage)
/** Where what could not be read is put: the second, third… time beside the first, never over it. */
export const setAside = (key: Named, time = 1): string => `${address(key)}${aside}${time === 1 ? '' : `-${time}`}`
const mostSetAside = 9

export function load<T>(key: Key<T>): Loaded<T> {
  let text: string | null
  try { text = place(key).getItem(address(key)) } catch { return { found: 'blocked' } }
  if (text === null) return { found: 'none' }
  const kept = text.length > key.bound ? null : parsed(text, key)
  if (kept) return { found: 'value', ...kept }
  putAside(key, text)
  return { found: 'damaged', text }
}

/** What cannot be read is put aside, so that the reader can still fetch it and nothing writes over it. */
export function putAside(key: Named, text: string): void {
  try {
    for (let time = 1; time <= mostSetAside; time++) if (localStorage.getItem(setAside(key, time)) === null) {
      localStorage.setItem(setAside(key, time), text)
      place(key).removeItem(address(key))
      break
    }
  } catch { /* it stays where it is */ }
}

function parsed<T>(text: string, key: Key<T>): { readonly value: T; readonly sound: boolean } | null {
  try {
    const kept = JSON.parse(text) as { version?: unknown; sum?: unknown; value?: unknown }
    const value = kept.version === key.version ? key.read(kept.value) : null
    return value === null ? null : { value, sound: kept.sum === sumOf(JSON.stringify(kept.value)) }
  } catch { return null }
}

export function save<T>(key: Key<T>, value: T): Saved {
  const sum = sumOf(JSON.stringify(value))
  const text = JSON.stringify({ version: key.version, sum, value })
  if (text.length > key.bound) return 'too large'
  try { place(key).setItem(address(key), text); return 'saved' } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked'
  }
}
export function forget(key: Named): void { try { place(key).removeItem(address(key)) } catch { /* nothing was kept */ } }

/** The text as it stands, to see whether anything changed it. */
export function textOf(key: Named): string | null { try { return place(key).getItem(address(key)) } catch { return null } }

/** Names of what is kept whose name begins so, in order; what was set aside is not among them. */
export function namesFrom(start: string): string[] {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(before + start) && !key.includes(aside)).map((key) => key.slice(before.length)).sort()
  } catch { return [] }
}

/** Tells a text from any other that a hand may have made of it (FNV-1a): no guard against malice, which the reading of values is. */
export function sumOf(text: string): number {
  let hash = 0x811c9dc5
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193)
  return hash >>> 0
}

/** Calls back with the name of what another tab has written or taken away. */
export function fromOtherTabs(told: (name: string) => void): void {
  if (typeof addEventListener === 'function') addEventListener('storage', ({ key, storageArea }) => { if (key?.startsWith(before) && storageArea === localStorage) told(key.slice(before.length)) })
}
