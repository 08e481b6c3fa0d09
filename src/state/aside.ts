import { aside, before } from './kept.ts'

/** All that was ever set aside in this browser, for the reader to fetch or to throw away. */
export function allSetAside(): { readonly address: string; readonly text: string }[] {
  try {
    return Object.keys(localStorage).filter((key) => key.startsWith(before) && key.includes(aside)).sort().map((key) => ({ address: key, text: localStorage.getItem(key) ?? '' }))
  } catch { return [] }
}
export function throwAway(addressSetAside: string): void { try { localStorage.removeItem(addressSetAside) } catch { /* it stays */ } }
