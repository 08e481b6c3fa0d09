import { emptySheet, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { fromOtherTabs, load } from './kept.ts'
import { builds, buildsKey, demoChosen, isOwn, keep, type Builds } from './own.ts'
import { demoSheets } from './solver/look.ts'
import { store, type Store } from './store.ts'

fromOtherTabs(buildsKey, () => {
  const kept = load(buildsKey)
  if (kept.found === 'value') builds.set(kept.value)
})

function step(next: Builds): void {
  past.push(builds.get())
  if (past.length > furthest) past.shift()
  undoable.set(true)
  keep(next)
}
/** What was there before each change of this visit; each shares with the next all that did not change. */
const past: Builds[] = []
const furthest = 100
export const undoable: Store<boolean> = store(false)
export function undo(): void {
  const before = past.pop()
  undoable.set(past.length > 0)
  if (before) keep(before)
}

/** The sheet that is shown. The invented ones come with the solver: before it has answered, an empty one stands for them. */
export const sheetOf = ({ chosen, own }: Builds): Sheet => own[chosen] ?? demoSheets.get()[chosen.replace('demo:', '')] ?? demoSheets.get()['street'] ?? nothing
const nothing = emptySheet()

/** A new build beside those that are there, chosen at once. */
export function open(sheet: Sheet): void {
  const now = builds.get()
  const taken = new Set(Object.values(now.own).map((s) => s.name))
  let name = sheet.name
  for (let i = 2; taken.has(name); i++) name = `${sheet.name} (${i})`
  const id = newId()
  step({ chosen: id, own: { ...now.own, [id]: { ...sheet, name } } })
}
const newId = (): string => `own:${Date.now().toString(36)}${Math.floor(Math.random() * 1296).toString(36)}`
export const choose = (chosen: string): void => step({ ...builds.get(), chosen })
export function remove(id: string): void {
  const { own } = builds.get()
  const { [id]: _, ...others } = own
  step({ chosen: Object.keys(others)[0] ?? demoChosen, own: others })
}

/** Changes the build that is shown. An invented build is copied first: it stays as it is. */
export function change(edit: (sheet: Sheet) => Sheet): void {
  const now = builds.get()
  const sheet = sheetOf(now)
  if (isOwn(now)) step({ ...now, own: { ...now.own, [now.chosen]: edit(sheet) } })
  else open(edit({ ...sheet, name: `Copy of ${sheet.name}` }))
}
