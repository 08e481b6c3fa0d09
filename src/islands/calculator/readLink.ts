import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { readValue } from '@trochoid/compute/calculation/inputs.ts'

/** The longest address that is read: longer than any of ours. */
const longest = 4000

export type Linked = { readonly values: Values; readonly faults: readonly string[] }
/** Reads the givens of an address, all or none: an answer from half of the sender's numbers would be nobody's. Sums are never read from an address. */
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
  return faults.length > 0 ? { values: {}, faults: [...new Set(faults)].slice(0, 5) } : { values, faults }
}
function decoded(text: string): string {
  try { return decodeURIComponent(text.replaceAll('_', ' ')) } catch { return text }
}
