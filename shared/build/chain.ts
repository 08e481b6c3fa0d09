import { NoAnswer, noValue, quantityOf, type AnyCalculation, type Input } from '../calculation/calculation.ts'
import { type PointValue } from './pointValue.ts'
import { type Failure } from './point.ts'

/** A calculation whose answers are values of the solved point, with its inputs and outputs looked up once. */
type Link = {
  readonly calc: AnyCalculation
  readonly inputs: readonly { readonly name: string; readonly path: string; readonly point: boolean; readonly optional: boolean }[]
  readonly outputs: readonly { readonly name: string; readonly path: string }[]
}
export type Chain = readonly Link[]

/** Puts links in the order in which each finds its inputs made. Throws where two wait for each other. */
export function chainOf(calculations: readonly AnyCalculation[]): Chain {
  const links = calculations.map(linkOf)
  const made = new Map(links.flatMap((link) => link.outputs.map((o) => [o.path, link] as const)))
  const done = new Set<Link>()
  const open = new Set<Link>()
  const ordered: Link[] = []
  const visit = (link: Link): void => {
    if (done.has(link)) return
    if (open.has(link)) throw new Error(`links wait for each other: ${[...open].map((l) => l.calc.id).join(', ')}`)
    open.add(link)
    for (const input of link.inputs) { const before = input.point ? made.get(input.path) : undefined; if (before && before !== link) visit(before) }
    open.delete(link)
    done.add(link)
    ordered.push(link)
  }
  links.forEach(visit)
  return ordered
}

function linkOf(calc: AnyCalculation): Link {
  return {
    calc,
    inputs: Object.entries(calc.in).map(([name, input]) => {
      if (input.origin === 'free') throw new Error(`${calc.id}: ${name} is free; a link reads only the sheet and the point`)
      return { name, path: input.path, point: input.origin === 'point', optional: 'optional' in (input as Input) }
    }),
    outputs: Object.entries(calc.out).filter(([, out]) => 'origin' in out).map(([name, out]) => {
      quantityOf(out)
      return { name, path: (out as PointValue).path }
    }),
  }
}

/** Runs the chain at one point: fills `values`, or says what each missing value waits for or why it has no answer. */
export function runChain(
  chain: Chain, fields: ReadonlyMap<string, unknown>,
  values: Record<string, number>, missing: Record<string, readonly string[]>, failed: Record<string, Failure>,
): void {
  for (const link of chain) {
    const given: Record<string, unknown> = {}
    let waits: string[] | null = null
    let failure: Failure | null = null
    for (const { name, path, point, optional } of link.inputs) {
      const value = point ? values[path] : fields.get(path)
      if (value !== undefined && value !== null) { given[name] = value; continue }
      if (optional) { given[name] = null; continue }
      if (point && failed[path]) failure ??= failed[path]
      else waits = [...(waits ?? []), ...(point ? missing[path] ?? [path] : [path])]
    }
    if (failure === null && waits === null) {
      try {
        const out = link.calc.answer(given)
        for (const { name, path } of link.outputs) {
          if (Number.isFinite(out[name])) values[path] = out[name]!
          else failed[path] = { link: link.calc.id, says: noValue(link.calc, [name]) }
        }
        continue
      } catch (error) {
        if (!(error instanceof NoAnswer)) throw error
        failure = { link: error.link, says: error.message }
      }
    }
    for (const { path } of link.outputs) if (failure) failed[path] = failure; else missing[path] = [...new Set(waits)]
  }
}
