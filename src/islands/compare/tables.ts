import { leftWords, stateWord } from '@trochoid/compute/build/margins.ts'
import type { Comparison } from '@trochoid/compute/comparison/compare.ts'
import { valueWords, type Said } from '@trochoid/compute/comparison/differing.ts'
import type { Moved } from '@trochoid/compute/comparison/movedMargins.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { csv } from '../parts/files.ts'
import { fromWords } from '../margins/words.ts'

/** State and what is left, `holds, 16 % left`. */
export const standing = (w: Moved['before'], system: System): string => [stateWord(w), leftWords(w, system)].filter(Boolean).join(', ')

/** Both tables, one under the other. */
export function comparisonCsv({ differs, moved }: Comparison, names: readonly [string, string], system: System): string {
  const said = (s: Said, d: Comparison['differs'][number]): readonly string[] => [valueWords(s.value, d.field, system), fromWords[s.from], s.note]
  return csv([
    ['link', names[0], names[1], 'left in the first, share or SI difference', 'left in the second', 'change'],
    ...moved.map((m) => [m.before.margin.title, standing(m.before, system), standing(m.after, system), String(m.before.left ?? ''), String(m.after.left ?? ''), String(m.change ?? '')]),
    [],
    ['number of the sheet', names[0], 'source', 'note', names[1], 'source', 'note'],
    ...differs.map((d) => [d.name, ...said(d.before, d), ...said(d.after, d)]),
  ])
}
