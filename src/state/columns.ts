import type { Mapping } from '@trochoid/compute/log/channels.ts'
import { load, save, type Key } from './kept.ts'

type Known = Readonly<Record<string, Mapping>>
const read = (data: unknown): Known | null => {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return null
  const right = Object.values(data).every((m) => typeof m === 'object' && m !== null && Object.values(m as object).every((one) => typeof one === 'object' && one !== null && typeof (one as { channel?: unknown }).channel === 'string' && typeof (one as { unit?: unknown }).unit === 'string'))
  return right ? (data as Known) : null
}
const key: Key<Known> = { name: 'log-columns', version: 1, bound: 60_000, read }
/** Loggers remembered: the oldest is forgotten. */
const most = 10

/** What the reader has said of the columns of each logger, by the names it writes. */
export function knownColumns(): Known { const kept = load(key); return kept.found === 'value' ? kept.value : {} }
export function rememberColumns(signature: string, mapping: Mapping): void {
  const { [signature]: _, ...others } = knownColumns()
  save(key, Object.fromEntries([...Object.entries(others), [signature, mapping] as const].slice(-most)))
}
