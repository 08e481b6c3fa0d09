import { isQuantity, type Of, type Quantity, type Shape, type ValueOf } from '../quantity/quantity.ts'
import { traced, type Entry } from '../formula/trace.ts'
import { type Field } from '../build/field.ts'
import { type PointValue } from '../build/pointValue.ts'

/** An input that belongs to no build: the reader's to choose, with a number to begin with. */
export type Free<S extends Shape = Shape> = { readonly origin: 'free'; readonly shape: S; readonly default: ValueOf<S>; readonly label?: string }
export const free = /* @__NO_SIDE_EFFECTS__ */ <S extends Shape>(shape: S, start: ValueOf<S>, label?: string): Free<S> =>
  label === undefined ? { origin: 'free', shape, default: start } : { origin: 'free', shape, default: start, label }

/** Each input is a field of the sheet, a value of the solved point, or free. */
export type Input = Field | PointValue | Free
/** An input that may be missing: the answer receives null and must say what it does without. */
export type Optional<I extends Input = Input> = I & { readonly optional: true }
export const optional = /* @__NO_SIDE_EFFECTS__ */ <I extends Input>(of: I): Optional<I> => ({ ...of, optional: true })

type Ins = Readonly<Record<string, Input | Optional>>
type Outs = Readonly<Record<string, Quantity | PointValue>>

export type Given<I extends Ins> = { readonly [N in keyof I]: I[N] extends { readonly optional: true } ? ValueOf<I[N]['shape']> | null : ValueOf<I[N]['shape']> }
type KindOf<O> = O extends PointValue<infer K> ? Of<K> : O extends Quantity<infer K> ? Of<K> : never
export type Answer<O extends Outs> = { readonly [N in keyof O]: KindOf<O[N]> }

export type Theme = 'start' | 'engine' | 'spark' | 'turbo' | 'fuel' | 'oil' | 'cooling' | 'driveline' | 'hand-over'

export type Spec<I extends Ins, O extends Outs> = {
  /** Stable, kebab case: part of addresses and of the headless contract. */
  readonly id: string
  readonly title: string
  readonly theme: Theme
  /** The question in a reader's words. */
  readonly asks: string
  /** Slug of the article that explains it. */
  readonly article: string
  /** Ids of entries in content/cautions. */
  readonly cautions: readonly string[]
  readonly in: I
  readonly out: O
  /** Input and output first shown as a curve. */
  readonly curve: readonly [keyof I & string, keyof O & string]
  /** The computation: calls formulas, adds no arithmetic of its own. Throws NoAnswer where there is none. */
  readonly answer: (x: Given<I>) => Answer<O>
  /** What the answer means for a build; `{name}` stands for an input or output written in the reader's units. */
  readonly says: (x: Given<I> & Answer<O>) => string
  /** What this result did not consider, in a few words. */
  readonly leavesOut: string
  /** Outputs that some sensible inputs leave without a value, such as the reach of a tank from which nothing is drawn. */
  readonly mayLack?: readonly (keyof O & string)[]
}

/** A calculation whose inputs are known only by name: what the generic parts handle. */
export type AnyCalculation = Omit<Spec<Ins, Outs>, 'answer' | 'says' | 'curve' | 'mayLack'> & {
  readonly curve: readonly [string, string]
  readonly mayLack?: readonly string[]
  readonly answer: (x: Values) => Readonly<Record<string, number>>
  readonly says: (x: Values) => string
}
export type Calculation<I extends Ins = Ins, O extends Outs = Outs> = Spec<I, O> & AnyCalculation
export type Values = Readonly<Record<string, unknown>>

export const calculation = /* @__NO_SIDE_EFFECTS__ */ <const I extends Ins, const O extends Outs>(spec: Spec<I, O>): Calculation<I, O> =>
  ({ ...spec, answer: (x: Given<I>) => solved(spec.id, () => spec.answer(x)) }) as unknown as Calculation<I, O>

/** There is no physical answer; the sentence says what has none and why. */
export class NoAnswer extends Error {
  readonly link: string
  constructor(link: string, says: string) { super(says); this.name = 'NoAnswer'; this.link = link }
}

/** A solver that finds nothing to close in on throws a RangeError: to a reader that is no answer, never a broken page. */
function solved<T>(id: string, answer: () => T): T {
  try { return answer() } catch (error) {
    if (error instanceof RangeError) throw new NoAnswer(id, 'With these inputs the equations have no solution. Look at those marked unusual first.')
    throw error
  }
}

/** What a reader is told of an output that is no number. */
export const noValue = (of: AnyCalculation, names: readonly string[]): string =>
  `With these inputs the equations give no value of ${names.map((name) => quantityOf(of.out[name]!).name).join(', ')}. Look at those marked unusual first.`

export type Run = { readonly outputs: Readonly<Record<string, number>>; readonly says: string; readonly trace: readonly Entry[] }

/** Runs a calculation with its working. Throws NoAnswer where there is none, or where what comes out is no number. */
export function run(of: AnyCalculation, values: Values): Run {
  const { result, trace } = traced(() => of.answer(values))
  const without = Object.keys(of.out).filter((name) => !Number.isFinite(result[name]) && !of.mayLack?.includes(name))
  if (without.length > 0) throw new NoAnswer(of.id, noValue(of, without))
  return { outputs: result, says: of.says({ ...values, ...result }), trace }
}

/** The quantity that an output is. */
export const quantityOf = (out: Quantity | PointValue): Quantity => ('origin' in out ? out.shape : out)
/** The name of an input as its reader sees it. */
export const labelOf = (input: Input): string => ('label' in input && input.label) || input.shape.name
/** Names of the inputs that are single numbers: what can be moved, solved for and drawn over. */
export const numericInputs = (of: AnyCalculation): string[] => Object.keys(of.in).filter((name) => isQuantity(of.in[name]!.shape))
