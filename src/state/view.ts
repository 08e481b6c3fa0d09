import type { Field } from '@trochoid/compute/build/field.ts'
import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { sheetOf } from './build.ts'
import { builds, isOwn } from './own.ts'
import { allFields, look } from './solver/look.ts'
import { store, type Store } from './store.ts'
import { thresholds } from './thresholds.ts'

/** The build that is shown, solved and weighed. `fine` when over all 36 speeds, which follows a pause in typing. */
export type View = { readonly sheet: Sheet; readonly solved: Solved; readonly weighed: readonly Weighed[]; readonly fine: boolean; readonly fields: ReadonlyMap<string, Field> }

const pause = 250

/** Follows the build as it is edited: twelve speeds at once, all of them after a pause. An answer that comes too late is dropped. */
export async function follow(): Promise<Store<View>> {
  const fields = await allFields()
  const first = sheetOf(builds.get())
  const found = await look(first)
  const view = store<View>({ sheet: first, fields, fine: true, ...found })
  let wanted = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  const see = async (sheet: Sheet, fine: boolean) => {
    const mine = ++wanted
    const found = await look(sheet, fine)
    if (mine === wanted) view.set({ ...view.get(), sheet, fine, ...found })
  }
  builds.watch(() => {
    const sheet = sheetOf(builds.get())
    // Fields must show what was typed at once, whatever the solver is doing.
    view.set({ ...view.get(), sheet, fine: false })
    void see(sheet, false)
    clearTimeout(timer)
    timer = setTimeout(() => void see(sheet, true), pause)
  })
  thresholds.watch(() => void see(view.get().sheet, true))
  if (isOwn(builds.get())) void remembered(view)
  return view
}
/** Keeps what the margins of the reader's build are, so that a later edition of the formulas can say what it moved. */
async function remembered(view: Store<View>): Promise<void> {
  const { remember } = await import('./weighed.ts')
  const note = () => { const { sheet, weighed, fine } = view.get(); if (fine) remember(sheet, weighed) }
  note()
  view.watch(note)
}
/** The name of a field within a sentence. */
export const namer = (fields: ReadonlyMap<string, Field>) => (path: string): string => {
  const f = fields.get(path)
  return f ? (f.label ?? f.shape.name).replace(/^[A-Z](?=[a-z])/, (c) => c.toLowerCase()) : path
}
