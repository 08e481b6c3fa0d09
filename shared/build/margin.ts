import { type Theme } from '../calculation/calculation.ts'
import { type Field } from './field.ts'
import { type PointValue } from './pointValue.ts'

/** `holds`, `tight` and `short` hold in this model only; `not known` is an answer too. */
export type State = 'holds' | 'tight' | 'short' | 'not known'

/** A change that would help a link which does not hold: which field, which way, in the words of the trade. */
export type Remedy = { readonly field: Field; readonly move: 'up' | 'down'; readonly says: string }

/** One link of the chain: what is asked of it, what it has, and what would mend it. */
export type Margin = {
  readonly id: string
  readonly title: string
  readonly theme: Theme
  /** The article that explains it; not among what a page’s solver answers, whose page knows the address. */
  readonly article: string
  /** Where it is asked: at every speed of the sweep, at idle, or once for the build. */
  readonly over: 'sweep' | 'idle' | 'build'
  readonly demand: PointValue | Field
  readonly capacity: PointValue | Field
  readonly must: 'stay below' | 'stay above'
  /** `share`: (capacity - demand) / demand, or the reverse for `stay above`. `difference`: in the quantity's own unit. */
  readonly as: 'share' | 'difference'
  /** Below this it is tight, below zero short: a fraction, or SI for a difference. The reader can change it. */
  readonly tight: number
  /** Low and high of the demand, where the model gives a band: a limit inside it reads `tight` at best. */
  readonly band?: readonly [PointValue, PointValue]
  /** A state that no number can change: knock is always `not known`. */
  readonly always?: 'not known'
  /** The best state that this model can honestly give. */
  readonly best?: State
  /** Links whose having no answer makes this one short too: what boils has no boil margin. */
  readonly shortBy?: readonly string[]
  /** Other words for the states, where the trade's own say less: `inside`, `outside`. */
  readonly words?: Readonly<Partial<Record<State, string>>>
  /** The numbers it rests on first: their provenance is the margin's, and one that is missing makes it `not known`. */
  readonly rests: readonly Field[]
  readonly remedies: readonly Remedy[]
  /** One sentence; `{demand}`, `{capacity}`, `{margin}`, `{speed}` are written in the reader's units. */
  readonly says: string
  /** What would settle it: one honest measurement. */
  readonly settle: string
}

export const margin = /* @__NO_SIDE_EFFECTS__ */ (of: Margin): Margin => of
