import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { plain, unitOf } from '@trochoid/compute/quantity/units.ts'
import { inUnit } from '@trochoid/compute/quantity/write.ts'
import type { State } from './model.ts'

/** Names that an address keeps for itself beside those of the givens: tables, and the sender's note. */
export const reserved = { tables: 'more', note: 'note' } as const

/**
 * Givens as they stand in an address: `speed=7000_rpm&drop=3_bar`. In words rather than squeezed, so that whoever is sent it can see what it says,
 * and shorter than squeezed for as few as a calculator has.
 */
export function linkText({ of, values, units }: State): string {
  return Object.entries(of.in).flatMap(([name, input]) => {
    const { shape } = input
    const value = values[name]
    if (value === null && 'optional' in input) return [`${name}=`]
    if (isQuantity(shape)) return typeof value === 'number' ? [`${name}=${spelt(Number(inUnit(value, shape, units[name]!).toPrecision(9)), shape.kind, units[name]!)}`] : []
    return typeof value === 'string' ? [`${name}=${encodeURIComponent(value)}`] : []
  }).join('&')
}
const spelt = (value: number, kind: Parameters<typeof unitOf>[0], unit: string): string => {
  if (unit === '1') return String(value)
  const { name, also } = unitOf(kind, unit)
  // A spelling that addresses carry as it is: cm3/min, degC, um.
  const bare = [name, ...also].map(plain).find((s) => /^[\w/ ().-]+$/.test(s)) ?? encodeURIComponent(name)
  return `${value}_${bare.replaceAll(' ', '_')}`
}

const isTable = ({ of }: State, name: string): boolean => of.in[name]!.shape.kind === 'curve' || of.in[name]!.shape.kind === 'map'
/** Curves and maps among the givens, squeezed; nothing where there are none. Without them the receiver's own would give another answer. */
export async function tablesText(state: State): Promise<string> {
  const tables = Object.keys(state.of.in).filter((name) => isTable(state, name) && state.values[name])
  if (tables.length === 0) return ''
  const { squeezed } = await import('@trochoid/compute/link/squeeze.ts')
  const bytes = new TextEncoder().encode(JSON.stringify(Object.fromEntries(tables.map((name) => [name, state.values[name]])), (key, value: unknown) => (key === 'name' ? 'Map from a link' : value)))
  return `&${reserved.tables}=${await squeezed(bytes)}`
}
export const noteText = (note: string): string => (note.trim() === '' ? '' : `&${reserved.note}=${encodeURIComponent(note.trim())}`)
