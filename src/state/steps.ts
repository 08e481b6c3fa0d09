import { apply, difference, reverse, type Patch, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { demoChosen, type Builds } from './own.ts'
import { isOfRecord, recordChanged, recordPatched } from './recordSteps.ts'

/** What a reader does to their builds, in a form that can be taken back and done again. */
export type Step =
  | { readonly kind: 'edit'; readonly id: string; readonly patches: readonly Patch[]; /** When, in ms. */ readonly at: number }
  | { readonly kind: 'open' | 'remove'; readonly id: string; readonly sheet: Sheet }

/** Name and note of a build change as its fields do: their paths have no dot, so that no field is meant. */
const texts = ['name', 'note'] as const

/** What leads from one sheet to another, name, note and the lines of the record among it. */
export const changed = (from: Sheet, to: Sheet): readonly Patch[] => [
  ...texts.filter((path) => from[path] !== to[path]).map((path): Patch => ({ path, before: { value: from[path] }, after: { value: to[path] } })),
  ...difference(from, to),
  ...recordChanged(from.record, to.record),
]
export function patched(sheet: Sheet, patches: readonly Patch[]): Sheet {
  const isText = ({ path }: Patch): boolean => (texts as readonly string[]).includes(path)
  const said = Object.fromEntries(patches.filter(isText).map(({ path, after }) => [path, String(after?.value ?? '')]))
  return recordPatched({ ...apply(sheet, patches.filter((p) => !isText(p) && !isOfRecord(p))), ...said }, patches.filter(isOfRecord))
}

export const reversed = (step: Step): Step =>
  step.kind === 'edit' ? { ...step, patches: reverse(step.patches) } : { ...step, kind: step.kind === 'open' ? 'remove' : 'open' }

/** The builds after a step. What a step changes is shown, so that nothing happens out of sight. */
export function stepped(now: Builds, step: Step): Builds {
  const { [step.id]: sheet, ...others } = now.own
  if (step.kind === 'remove') return { ...now, own: others, chosen: now.chosen === step.id ? Object.keys(others).at(-1) ?? demoChosen : now.chosen }
  if (step.kind !== 'edit') return { ...now, own: { ...others, [step.id]: step.sheet }, chosen: step.id }
  // Removed meanwhile in another tab: there is nothing to change.
  return sheet ? { ...now, own: { ...now.own, [step.id]: patched(sheet, step.patches) }, chosen: step.id } : now
}

/** Keys typed one after another into a field are one step to take back. */
const burst = 1500
/** Both steps as one, where the second goes on with what the first began. */
export function together(last: Step | undefined, next: Step): Step | null {
  if (last?.kind !== 'edit' || next.kind !== 'edit' || last.id !== next.id || next.at - last.at > burst) return null
  const { patches } = last
  const paths = (all: readonly Patch[]) => all.map((p) => p.path).join()
  return paths(patches) === paths(next.patches) ? { ...next, patches: next.patches.map((p, i) => ({ ...p, before: patches[i]!.before })) } : null
}
