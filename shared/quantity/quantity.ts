import { type Kind } from './kinds.ts'

declare const kindOf: unique symbol
/** A number that remembers its kind: arithmetic passes, but an absolute pressure does not go where a difference belongs. */
export type Of<K extends Kind> = number & { readonly [kindOf]?: K }

/** A word of the trade: one number with a symbol, a kind, a sensible range and the step by which it is usually uncertain. */
export type Quantity<K extends Kind = Kind> = {
  readonly id: string
  readonly name: string
  readonly symbol: string
  readonly kind: K
  /** Sensible range, SI: what a two-rotor build meets. A value outside it is doubted, not refused. */
  readonly range: readonly [number, number]
  /** Tolerance step, SI: how well such a number is usually known. */
  readonly step: number
  /** Units a metric and an imperial reader sees, where they differ from those of the kind. */
  readonly show?: readonly [string, string]
  /** Whole numbers only: a count. */
  readonly whole?: true
  /** Other ways to type it: hose dash sizes. */
  readonly reads?: 'dash'
}

type Options = Pick<Quantity, 'show' | 'whole' | 'reads'>

/** Declares a quantity; its plain-word meaning and how to measure it stand beside it in `words.ts`. */
export const quantity = /* @__NO_SIDE_EFFECTS__ */ <K extends Kind>(
  name: string, symbol: string, kind: K, range: readonly [number, number], step: number, options: Options = {},
): Quantity<K> => ({ id: slug(name), name, symbol, kind, range, step, ...options })

/** The same quantity in another part of one formula, with a symbol (and a name) of its own. */
export const role = /* @__NO_SIDE_EFFECTS__ */ <K extends Kind>(of: Quantity<K>, symbol: string, name = of.name): Quantity<K> =>
  ({ ...of, symbol, name })

/** One of a listed few. */
export type Choice<V extends string = string> = { readonly id: string; readonly name: string; readonly kind: 'choice'; readonly choices: Readonly<Record<V, string>> }
export const choice = /* @__NO_SIDE_EFFECTS__ */ <V extends string>(name: string, choices: Readonly<Record<V, string>>): Choice<V> =>
  ({ id: slug(name), name, kind: 'choice', choices })

/** An oil grade as printed on the can, `10W-40` or `40`, in the form of SAE J300. */
export type Grade = { readonly id: string; readonly name: string; readonly kind: 'grade' }
export const gradeOf = /* @__NO_SIDE_EFFECTS__ */ (name: string): Grade => ({ id: slug(name), name, kind: 'grade' })

/** One quantity over another, as points in order of x. */
export type Points = { readonly x: readonly number[]; readonly y: readonly number[] }
export type Curve = { readonly id: string; readonly name: string; readonly kind: 'curve'; readonly x: Quantity; readonly y: Quantity }
export const curveOf = /* @__NO_SIDE_EFFECTS__ */ (name: string, x: Quantity, y: Quantity): Curve => ({ id: slug(name), name, kind: 'curve', x, y })

/** One speed line of a compressor map, from surge to choke. */
export type SpeedLine = { readonly speed: number; readonly flow: readonly number[]; readonly ratio: readonly number[]; readonly efficiency: readonly number[] }
/** A compressor map: corrected speed rad/s, corrected flow kg/s, total-to-total pressure ratio, isentropic efficiency. */
export type CompressorMap = { readonly name: string; readonly referenceTemperature: number; readonly referencePressure: number; readonly lines: readonly SpeedLine[]; readonly estimate?: boolean }
export type MapShape = { readonly id: string; readonly name: string; readonly kind: 'map' }
export const mapOf = /* @__NO_SIDE_EFFECTS__ */ (name: string): MapShape => ({ id: slug(name), name, kind: 'map' })

export type Shape = Quantity | Choice | Grade | Curve | MapShape
export type ValueOf<S> = S extends Choice<infer V> ? V : S extends Grade ? string : S extends Curve ? Points : S extends MapShape ? CompressorMap
  : S extends Quantity<infer K> ? Of<K> : never

export const isQuantity = (s: Shape): s is Quantity => s.kind !== 'choice' && s.kind !== 'grade' && s.kind !== 'curve' && s.kind !== 'map'

/** Plain words about a quantity, kept apart so that a calculator does not carry them to the browser. */
export type Words = { readonly means: string; readonly measure: string }
/** Words for every quantity of a discipline: a missing or surplus one does not compile. */
export type WordsFor<M> = { readonly [N in keyof M as M[N] extends Shape ? N : never]: Words }

function slug(name: string): string {
  return name.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '')
}
