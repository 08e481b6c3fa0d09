import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { load, namesFrom, textOf, type Key, type Saved } from './kept.ts'
import { store, type Store } from './store.ts'

/** The invented build that pages are made with. */
export const demoChosen = 'demo:street'
/** The build that an address brought: it stands beside the reader's own and is kept nowhere. */
export const sentChosen = 'sent'
/** The reader's builds by an id of their own, and which one the pages show: one of them, one that was sent, or `demo:` and the name of an invented one. */
export type Builds = { readonly chosen: string; readonly own: Readonly<Record<string, Sheet>>; readonly sent?: Sheet }

const buildName = 'build.'
/** Each build for itself: what damages one leaves the others whole. */
export const buildKey = (id: string): Key<Sheet> => ({ name: buildName + id, version: 1, bound: 300_000, read: readBuild })
/** The id of the build that is kept under this name; null where it is none that this handbook gave. */
export const idOf = (name: string): string | null => /^build\.([a-z0-9-]{1,40})$/i.exec(name)?.[1] ?? null
/** The last choice of any tab, and of this one: two tabs may show two builds. */
export const chosenKey: Key<string> = { name: 'chosen', version: 1, bound: 200, read: (data) => (typeof data === 'string' && /^[a-z0-9:-]{1,40}$/i.test(data) ? data : null) }
export const chosenHereKey: Key<string> = { ...chosenKey, tab: true }
/** All builds in one, as they were kept before each had a key. */
export const formerKey = { name: 'builds' } as const

export const newId = (): string => `${Date.now().toString(36)}${Math.floor(Math.random() * 46656).toString(36).padStart(3, '0')}`

/** Only the form is looked at here, on every page. Values that a hand may have changed are read as a file's are before they are used: `arrive.ts`. */
function readBuild(data: unknown): Sheet | null {
  return plain(data) && data['format'] === 'trochoid-build' && data['version'] === 1 && typeof data['name'] === 'string' && typeof data['note'] === 'string'
    && plain(data['entries']) && Object.values(data['entries']).every((e) => plain(e) && 'value' in e) ? (data as Sheet) : null
}
const plain = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x)

/** Builds that something other than this handbook wrote last. */
const doubted: Record<string, Sheet> = {}
/** What became of the last save: said to the reader when it is not `saved`. */
export const saved: Store<Saved | 'damaged' | null> = store<Saved | 'damaged' | null>(null)
export const builds: Store<Builds> = store(typeof document === 'undefined' ? { chosen: demoChosen, own: {} } : first())

function first(): Builds {
  const own: Record<string, Sheet> = {}
  for (const name of namesFrom(buildName)) {
    const id = idOf(name)
    if (id === null) continue
    const kept = load(buildKey(id))
    if (kept.found === 'value') (kept.sound ? own : doubted)[id] = kept.value
    else if (kept.found === 'damaged') saved.set('damaged')
  }
  const here = load(chosenHereKey)
  const chosen = here.found === 'value' ? here : load(chosenKey)
  if (chosen.found === 'blocked') saved.set('blocked')
  const id = chosen.found === 'value' ? chosen.value : demoChosen
  return { chosen: Object.hasOwn(own, id) || Object.hasOwn(doubted, id) || id.startsWith('demo:') ? id : demoChosen, own }
}

const sends = (): boolean => location.hash.startsWith('#build=')
const arrives = typeof document !== 'undefined' && (sends() || Object.keys(doubted).length > 0 || textOf(formerKey) !== null)
/** Settled once all builds are there: at once, unless an address brings one or what is kept must be looked at closely first. */
export const ready: Promise<void> = arrives ? import('./arrive.ts').then(({ arrive }) => arrive(doubted, sends())) : Promise.resolve()

/** Whether the pages are to show other numbers than those they were built with. */
export const hasOwn = (): boolean => arrives || builds.get().chosen !== demoChosen
export const isOwn = ({ chosen, own }: Builds): boolean => Object.hasOwn(own, chosen)
/** Whose build is shown. */
export const whose = (now: Builds): 'own' | 'sent' | 'demo' => (isOwn(now) ? 'own' : now.chosen === sentChosen ? 'sent' : 'demo')

/** Whether the page shows the reader's build, or is to from now on, though it was opened without one. */
export const followed: Store<boolean> = store(hasOwn())

if (typeof document !== 'undefined') {
  // The page's head says on every page what went wrong with keeping; until there is something to say it draws nothing.
  const tell = () => { if (saved.get() !== null && saved.get() !== 'saved') dispatchEvent(new Event('trochoid:notice')) }
  saved.watch(tell)
  setTimeout(tell)
  builds.watch(() => {
    if (followed.get() || !hasOwn()) return
    // Following it takes the whole model. Where the site is kept for reading offline it is already there, and some pages have it anyway; else the reader is asked.
    if (navigator.serviceWorker?.controller || !/^(art|calc)/.test(document.body.dataset.page!)) followed.set(true)
    else dispatchEvent(new Event('trochoid:notice'))
  })
}
