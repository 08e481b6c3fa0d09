import { type Field } from '../build/field.ts'
import { type System } from '../quantity/write.ts'
import { differing, type Differing } from './differing.ts'
import { inWords } from './inWords.ts'
import { movedMargins, type Moved } from './movedMargins.ts'
import { type Side } from './side.ts'

export type Comparison = { readonly differs: readonly Differing[]; readonly moved: readonly Moved[]; readonly says: readonly string[] }

/** Two builds side by side: what differs in the sheet, which links moved, and in words what the choice buys and costs. */
export function compare(a: Side, b: Side, fields: ReadonlyMap<string, Field>, system: System = 'metric'): Comparison {
  const differs = differing(a.sheet, b.sheet, fields)
  const moved = movedMargins(a.weighed, b.weighed)
  return { differs, moved, says: inWords(a, b, differs, moved, system) }
}
