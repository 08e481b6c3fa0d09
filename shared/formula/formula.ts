import { type Of, type Quantity, type Shape, type ValueOf } from '../quantity/quantity.ts'
import { enter, leave, record, tracing } from './trace.ts'
import { type Constant } from './constants.ts'

/** Id of an entry in `shared/data/sources.ts`, and the place in it; 'common-practice' and 'derived' are sources too. */
export type Source = readonly [id: string, place: string]

type Ins = Readonly<Record<string, Shape>>
type Outs = Quantity | Readonly<Record<string, Quantity>>

type Common = {
  readonly name: string
  readonly in: Ins
  /** One quantity, or several by name. */
  readonly out: Outs
  readonly source: Source
  /** What is assumed, and what the source says of its range where that is not a number. */
  readonly notes?: string
  readonly constants?: Readonly<Record<string, Constant>>
  /** Units that an empirical equation's numbers are in, by name of input or output: `{ temperature: '°C' }`. */
  readonly units?: Readonly<Record<string, string>>
  /** Where the generated test samples each input, SI; by default the formula's range, else the quantity's. */
  readonly sample?: Readonly<Record<string, readonly [number, number]>>
}
/** An equation that mathjs reads: names are those of `in` and `constants`. With several outputs, one equation each. */
export type Explicit = Common & { readonly equation: string | Readonly<Record<string, string>> }
/** An equation `left = right` that holds at the answer; the single output is called `out` in it, several by their names. */
export type Implicit = Common & { readonly holds: string | readonly string[] }
/** A published table, read by the stated interpolation; `nodes` are inputs and outputs, SI, at which it must be exact. */
export type Table = Common & { readonly table: string; readonly nodes: readonly { readonly in: Readonly<Record<string, number | string>>; readonly out: number | Readonly<Record<string, number>> }[] }
/** An algorithm in words. Its test checks properties. */
export type Steps = Common & { readonly steps: readonly string[] }
export type About = Explicit | Implicit | Table | Steps

/** Inputs of a formula that another takes over, but for some, and its own. */
// @__NO_SIDE_EFFECTS__
export function inputsBut<I extends Ins, N extends keyof I, More extends Ins>(of: { readonly in: I }, names: readonly N[], more: More): Omit<I, N> & More {
  return { ...(Object.fromEntries(Object.entries(of.in).filter(([name]) => !names.includes(name as N))) as Omit<I, N>), ...more }
}

export type Inputs<I extends Ins> = { readonly [N in keyof I]: ValueOf<I[N]> }
export type Outputs<O> = O extends Quantity<infer K> ? Of<K> : { readonly [N in keyof O]: O[N] extends Quantity<infer K> ? Of<K> : never }

/** Range that the source states, SI, by input. An input left out has none stated: unknown is not unlimited. */
export type Range<I extends Ins> = { readonly [N in keyof I]?: readonly [number, number] }

export type Formula<A extends About = About> = ((x: Inputs<A['in']>) => Outputs<A['out']>) & {
  readonly id: string
  readonly range: Range<A['in']>
  /** The code without the recording: for measuring what the recording costs. */
  readonly bare: (x: Inputs<A['in']>) => Outputs<A['out']>
}

/**
 * Makes a formula of a plain function: it can then be traced. The words stay in `about`, which the browser never receives.
 * @param id stable, kebab case, same as the file name
 * @param range what the source states, SI; `{}` when it states none
 */
// @__NO_SIDE_EFFECTS__
export function formula<A extends About>(id: string, range: Range<A['in']>, code: (x: Inputs<A['in']>) => Outputs<A['out']>): Formula<A> {
  const call = (x: Inputs<A['in']>): Outputs<A['out']> => {
    if (!tracing()) return code(x)
    enter()
    let out: Outputs<A['out']>
    try { out = code(x) } finally { leave() }
    record({ id, in: x, out, outside: outsideOf(x, range) })
    return out
  }
  return Object.assign(call, { id, range, bare: code })
}

function outsideOf(x: Readonly<Record<string, unknown>>, range: Readonly<Record<string, readonly [number, number] | undefined>>): string[] {
  return Object.keys(range).filter((name) => {
    const limits = range[name]
    const value = x[name]
    return limits !== undefined && typeof value === 'number' && !(value >= limits[0] && value <= limits[1])
  })
}
