import { builds as demos } from '@trochoid/compute/data/builds/index.ts'
import { emptySheet, setEntry, type Entry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { fromOtherTabs, save, type Saved } from './kept.ts'
import { buildsKey, demoChosen, loadBuilds, type Builds } from './own.ts'
import { store, type Store } from './store.ts'

const first = loadBuilds()
export const builds: Store<Builds> = store(first.found === 'value' ? first.value : { chosen: demoChosen, own: {} })
/** What became of the last save: said to the reader when it is not `saved`. */
export const saved: Store<Saved | 'damaged' | null> = store<Saved | 'damaged' | null>(first.found === 'damaged' ? 'damaged' : first.found === 'blocked' && typeof document !== 'undefined' ? 'blocked' : null)
/** What could not be read of the store, for the reader to fetch. */
export const damaged: string | null = first.found === 'damaged' ? first.text : null

fromOtherTabs(buildsKey, () => {
  const kept = loadBuilds()
  if (kept.found === 'value') builds.set(kept.value)
})

function keep(next: Builds, step = true): void {
  if (step) { past.push(builds.get()); if (past.length > furthest) past.shift() }
  undoable.set(past.length > 0)
  builds.set(next)
  saved.set(save(buildsKey, next))
}
/** What was there before each change of this visit; a change is a patch over what is shared, so this costs little. */
const past: Builds[] = []
const furthest = 100
export const undoable: Store<boolean> = store(false)
export function undo(): void {
  const before = past.pop()
  if (before) keep(before, false)
}

export const demoSheets: Readonly<Record<string, Sheet>> = demos
export function sheetOf({ chosen, own }: Builds): Sheet {
  return own[chosen] ?? demoSheets[chosen.replace('demo:', '')] ?? demoSheets['street']!
}
export const isOwn = ({ chosen, own }: Builds): boolean => Object.hasOwn(own, chosen)

/** A new build beside those that are there, chosen at once. */
export function open(sheet: Sheet): void {
  const now = builds.get()
  const taken = new Set(Object.values(now.own).map((s) => s.name))
  let name = sheet.name
  for (let i = 2; taken.has(name); i++) name = `${sheet.name} (${i})`
  const id = `own:${Date.now().toString(36)}${Math.floor(Math.random() * 1296).toString(36)}`
  keep({ chosen: id, own: { ...now.own, [id]: { ...sheet, name } } })
}
export const choose = (chosen: string): void => keep({ ...builds.get(), chosen })
export function remove(id: string): void {
  const { own } = builds.get()
  const { [id]: _, ...others } = own
  keep({ chosen: Object.keys(others)[0] ?? demoChosen, own: others })
}

/** Changes the build that is shown. An invented build is copied first: it stays as it is. */
export function change(edit: (sheet: Sheet) => Sheet): void {
  const now = builds.get()
  if (isOwn(now)) return keep({ ...now, own: { ...now.own, [now.chosen]: edit(sheetOf(now)) } })
  const demo = sheetOf(now)
  open(edit({ ...demo, name: `Copy of ${demo.name}` }))
}

/** Puts one number in the reader's own build, beginning one where there is none. */
export function changeOwn(path: string, entry: Entry): void {
  const now = builds.get()
  if (!isOwn(now)) {
    const last = Object.keys(now.own).at(-1)
    if (last) choose(last); else open(emptySheet())
  }
  change((sheet) => setEntry(sheet, path, { ...sheet.entries[path], ...entry }))
}
