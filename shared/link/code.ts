import { type Shape } from '../quantity/quantity.ts'
import { type From } from '../build/sheet.ts'
import { edition } from '../build/corrections.ts'
import { reader, writer, type Reader } from './bytes.ts'
import { damaged, LinkFault } from './fault.ts'
import { mark } from './mark.ts'
import { longestNote, plainNote } from './note.ts'
import { squeezed, unsqueezed } from './squeeze.ts'
import { readValueOf, writeValue } from './values.ts'

/** One number of a link by its name. A null value means: not known. */
export type Item = { readonly name: string; readonly value: unknown; readonly from?: From }
export type Coded = { readonly items: readonly Item[]; readonly note: string; /** Version of the document the names belong to. */ readonly version: number; /** Of the handbook that made it. */ readonly edition: number }

const mostItems = 1000
const kindsOf: readonly (Shape['kind'] | 'unknown' | 'number')[] = ['unknown', 'number', 'choice', 'grade', 'curve', 'map']
const froms: readonly (From | undefined)[] = [undefined, 'measured', 'maker', 'common', 'guess']
const kindOf = (shape: Shape, value: unknown): number => (value === null ? 0 : Math.max(kindsOf.indexOf(shape.kind), 1))

/** Names, values and where they came from, with a note, as the text of an address. */
export async function codeOf(items: readonly Item[], shapes: ReadonlyMap<string, Shape>, note: string, version: number): Promise<string> {
  const to = writer()
  to.whole(version)
  to.whole(edition)
  to.text(plainNote(note).slice(0, longestNote))
  const known = items.filter(({ name }) => shapes.has(name))
  to.whole(known.length)
  // Names first, then what they are, then the numbers: like stands beside like, which squeezes best.
  for (const { name } of known) { const m = mark(name); to.byte(m >> 16); to.byte((m >> 8) & 255); to.byte(m & 255) }
  for (const { name, value, from } of known) to.byte(kindOf(shapes.get(name)!, value) * 8 + froms.indexOf(from))
  for (const { name, value } of known) if (value !== null) writeValue(to, value, shapes.get(name)!)
  return squeezed(to.done())
}

/** Reads what `codeOf` wrote; throws a `LinkFault` where it cannot. Values are as foreign as those of a file: weigh them before use. */
export async function readCode(code: string, shapes: ReadonlyMap<string, Shape>): Promise<Coded> {
  const from = reader(await unsqueezed(code))
  const version = from.whole(1000)
  const made = from.whole(100_000)
  const newer = made > edition
  try {
    const note = from.text(4 * longestNote)
    if (note.length > longestNote) throw damaged()
    const items = readItems(from, shapes)
    if (!from.end()) throw damaged()
    return { items, note: plainNote(note), version, edition: made }
  } catch (error) {
    if (newer && error instanceof LinkFault) throw new LinkFault('The link was made by a newer handbook and names things that this copy does not know yet.', true)
    throw error
  }
}

function readItems(from: Reader, shapes: ReadonlyMap<string, Shape>): Item[] {
  const names = new Map([...shapes.keys()].map((name) => [mark(name), name]))
  const marks = Array.from({ length: from.whole(mostItems) }, () => from.byte() * 65536 + from.byte() * 256 + from.byte())
  if (new Set(marks).size < marks.length) throw damaged()
  return marks.map((m) => [m, from.byte()] as const).map(([m, head]): Item => {
    const name = names.get(m)
    if (name === undefined) throw damaged()
    const shape = shapes.get(name)!
    const kind = head >> 3
    if (kind > 0 && kind !== kindOf(shape, 0) || (head & 7) >= froms.length) throw damaged()
    const origin = froms[head & 7]
    return { name, value: kind === 0 ? null : readValueOf(from, shape), ...(origin !== undefined && { from: origin }) }
  })
}
