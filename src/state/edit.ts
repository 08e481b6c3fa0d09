import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { forget, save } from './kept.ts'
import { buildKey, builds, chosenHereKey, chosenKey, newId, saved, sentChosen } from './own.ts'
import { changed, reversed, stepped, together, type Step } from './steps.ts'
import { store, type Store } from './store.ts'
import { catchUp, sawNow } from './tabs.ts'

/** What was done in this visit, the last at the end, and what was taken back of it. */
const past: Step[] = []
const ahead: Step[] = []
const furthest = 200
export const undoable: Store<boolean> = store(false)
export const redoable: Store<boolean> = store(false)

function did(step: Step): void {
  const both = together(past.at(-1), step)
  if (both) past.pop()
  past.push(both ?? step)
  if (past.length > furthest) past.shift()
  ahead.length = 0
  take(step)
}
export function undo(): void {
  const step = past.pop()
  if (!step) return
  ahead.push(step)
  take(reversed(step))
}
export function redo(): void {
  const step = ahead.pop()
  if (!step) return
  past.push(step)
  take(step)
}

function take(step: Step): void {
  catchUp(step.id)
  builds.set(stepped(builds.get(), step))
  keep(step.id)
  keepChosen()
  undoable.set(past.length > 0)
  redoable.set(ahead.length > 0)
}

/** Builds whose last change the browser did not keep. */
const unkept = new Set<string>()
function keep(id: string): void {
  const sheet = builds.get().own[id]
  const key = buildKey(id)
  const done = sheet ? save(key, sheet) : (forget(key), 'saved')
  sawNow(id)
  if (done === 'saved') unkept.delete(id)
  else unkept.add(id)
  saved.set(unkept.size === 0 ? 'saved' : done === 'saved' ? saved.get() : done)
}
function keepChosen(): void {
  const { chosen } = builds.get()
  if (chosen === sentChosen) return
  save(chosenKey, chosen)
  save(chosenHereKey, chosen)
}
// Where the browser keeps nothing, the page itself is all there is of a build: leaving it is asked for first.
if (typeof document !== 'undefined') addEventListener('beforeunload', (event) => { if (unkept.size > 0) event.preventDefault() })

/** Of a build, in characters: a file with a longer one is refused. */
const longestName = 120
/** A new build beside those that are there, chosen at once. */
export function open(sheet: Sheet): void {
  const taken = new Set(Object.values(builds.get().own).map((s) => s.name))
  let name = sheet.name.slice(0, longestName)
  for (let i = 2; taken.has(name); i++) name = `${sheet.name.slice(0, longestName - 10)} (${i})`
  did({ kind: 'open', id: newId(), sheet: { ...sheet, name } })
}

/** Changes one of the reader's builds. */
export function edit(id: string, change: (sheet: Sheet) => Sheet): void {
  const sheet = builds.get().own[id]
  const patches = sheet ? changed(sheet, change(sheet)) : []
  if (patches.length > 0) did({ kind: 'edit', id, patches, at: Date.now() })
}
export function remove(id: string): void {
  const sheet = builds.get().own[id]
  if (sheet) did({ kind: 'remove', id, sheet })
}
/** Puts a build back under the id it had. */
export const putBack = (id: string, sheet: Sheet): void => did({ kind: 'open', id, sheet })

export function choose(chosen: string): void {
  builds.set({ ...builds.get(), chosen })
  keepChosen()
}
