import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { readValue } from '@trochoid/compute/calculation/inputs.ts'
import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { plain, unitOf } from '@trochoid/compute/quantity/units.ts'
import { inUnit } from '@trochoid/compute/quantity/write.ts'
import type { State } from './model.ts'

/** The longest address that is read: longer than any of ours. */
const longest = 4000

/** Givens as they stand in an address: `speed=7000_rpm&drop=3_bar`. Curves and maps are left to the build. */
export function linkText({ of, values, units }: State): string {
  return Object.entries(of.in).flatMap(([name, { shape }]) => {
    const value = values[name]
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

export type Linked = { readonly values: Values; readonly faults: readonly string[] }
/** Reads the givens of an address; what cannot be read is told and left out. Sums are never read from an address. */
export function readLink(of: AnyCalculation, fragment: string): Linked | null {
  const text = fragment.replace(/^#/, '')
  if (!text.includes('=')) return null
  if (text.length > longest) return { values: {}, faults: ['The address is too long to be one of ours.'] }
  const values: Record<string, unknown> = {}
  const faults: string[] = []
  for (const part of text.split('&')) {
    const cut = part.indexOf('=')
    const name = part.slice(0, cut)
    if (!Object.hasOwn(of.in, name)) { faults.push(`This calculator has no given called “${name.slice(0, 40)}”.`); continue }
    const read = readValue(decoded(part.slice(cut + 1)), of.in[name]!.shape)
    if (read.ok) values[name] = read.value
    else faults.push(read.says)
  }
  return { values, faults }
}
function decoded(text: string): string {
  try { return decodeURIComponent(text.replaceAll('_', ' ')) } catch { return text }
}
