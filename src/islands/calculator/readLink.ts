import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { readValue } from '@trochoid/compute/calculation/inputs.ts'
import { LinkFault } from '@trochoid/compute/link/fault.ts'
import { longestNote, plainNote } from '@trochoid/compute/link/note.ts'
import { reserved } from './link.ts'

/** The longest address that is read, in characters. */
const longest = 16_384

export type Linked = { readonly values: Values; readonly note: string; readonly faults: readonly string[]; /** A later handbook may know what this one does not. */ readonly newer: boolean }
/** Reads the givens of an address, all or none: an answer from half of the sender's numbers would be nobody's. Sums are never read from an address. */
export async function readLink(of: AnyCalculation, fragment: string): Promise<Linked | null> {
  const text = fragment.replace(/^#/, '')
  if (!text.includes('=') || text.startsWith('build=')) return null
  const faults: string[] = []
  if (text.length > longest) return refused(['The address is too long to be one of ours.'])
  const values: Record<string, unknown> = {}
  let note = ''
  let newer = false
  const put = (name: string, given: unknown) => {
    const input = Object.hasOwn(of.in, name) ? of.in[name]! : null
    if (!input) { newer = true; return faults.push(`This calculator has no given called “${name.slice(0, 40)}”.`) }
    if (Object.hasOwn(values, name)) return faults.push(`The address gives “${name}” twice.`)
    const read = given === '' && 'optional' in input ? { ok: true as const, value: null } : readValue(given, input.shape)
    if (read.ok) values[name] = read.value
    else faults.push(read.says)
    return undefined
  }
  for (const part of text.split('&')) {
    const cut = part.indexOf('=')
    const [name, given] = [part.slice(0, cut), part.slice(cut + 1)]
    if (name === reserved.note) {
      note = plainNote(decoded(given))
      if (note.length > longestNote) faults.push(`Its note is longer than ${longestNote} characters.`)
    } else if (name === reserved.tables) {
      try { for (const [table, value] of Object.entries(await tablesOf(given))) put(table, value) } catch (error) {
        if (!(error instanceof LinkFault)) throw error
        faults.push(error.message)
        newer ||= error.newer
      }
    } else put(name, decoded(given.replaceAll('_', ' ')))
  }
  return faults.length > 0 ? refused([...new Set(faults)].slice(0, 5), newer) : { values, note, faults, newer: false }
}
const refused = (faults: readonly string[], newer = false): Linked => ({ values: {}, note: '', faults, newer })

/** Curves and maps, unfolded within bounds; weighed afterwards as everything else is. */
async function tablesOf(code: string): Promise<object> {
  const { unsqueezed } = await import('@trochoid/compute/link/squeeze.ts')
  const text = new TextDecoder().decode(await unsqueezed(code))
  let data: unknown = null
  try { data = JSON.parse(text) } catch { /* refused below */ }
  if (typeof data !== 'object' || data === null || Array.isArray(data)) throw new LinkFault('The tables of the address are damaged.')
  return data
}
function decoded(text: string): string {
  try { return decodeURIComponent(text) } catch { return text }
}
