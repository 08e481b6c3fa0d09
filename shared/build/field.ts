import { type Shape, type ValueOf } from '../quantity/quantity.ts'

/** One entry of the build sheet. `start` is what an untouched sheet holds; null means it is not known until the reader says. */
export type Field<S extends Shape = Shape> = {
  readonly origin: 'field'
  readonly path: string
  readonly shape: S
  readonly start: ValueOf<S> | null
  /** Path of the field that takes the "at 3 bar" of "650 cc/min at 3 bar". */
  readonly at?: string
  /** A name in this place of the sheet, where the quantity's own would be unclear. */
  readonly label?: string
}
type Options = Pick<Field, 'at' | 'label'>

/** Declares a field; why its start value stands there is said in the discipline's `words.ts`. */
export const field = /* @__NO_SIDE_EFFECTS__ */ <S extends Shape>(path: string, shape: S, start: ValueOf<S> | null, options: Options = {}): Field<S> =>
  ({ origin: 'field', path, shape, start, ...options })

/** For every field of a discipline, why its start value is what it is. */
export type Reasons<M> = { readonly [N in keyof M as M[N] extends Field ? N : never]: string }
