/** Where a reader was on a page: how far down, which folds were open, what stood in the fields. */
export type Place = { readonly top: number; readonly folds: readonly string[]; readonly fields: Readonly<Record<string, string>> }
export type Typed = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement

const address = (): string => `trochoid.place ${location.pathname}`
/** Longest text that is kept for one page, in characters; it is gone with the tab. */
const bound = 50_000

/** A fold without a name of its own is found by the nearest named part around it and its place there. */
function nameOf(fold: HTMLDetailsElement): string {
  const around = fold.closest('[id]') ?? document.body
  return `${around.id} ${[...around.querySelectorAll('details')].indexOf(fold)}`
}
const folds = (): HTMLDetailsElement[] => [...document.querySelectorAll<HTMLDetailsElement>('main details')]
/** Those whose text belongs to the page. What stands in the fields of a build the build itself keeps, and another tab or another choice may have changed it since. */
const fields = (): Typed[] => [...document.querySelectorAll<Typed>('main :is(input:not([type=file], [readonly]), select, textarea)[id]')].filter((field) => !field.closest('[data-sheet], .margin, .which'))
const touched = (field: Typed): boolean => ('defaultValue' in field ? field.value !== field.defaultValue : ![...field.options].some((o) => o.defaultSelected && o.selected))

function put(): void {
  const place: Place = {
    top: scrollY,
    folds: folds().filter(({ open }) => open).map(nameOf),
    fields: Object.fromEntries(fields().filter(touched).map(({ id, value }) => [id, value])),
  }
  const text = JSON.stringify(place)
  try { if (text.length <= bound) sessionStorage.setItem(address(), text) } catch { /* the page then opens at its top */ }
}

function found(): Place | null {
  try { return JSON.parse(sessionStorage.getItem(address()) ?? 'null') as Place | null } catch { return null }
}

/** Back, forward and reloading bring a reader to where they were: same place, same folds, same text in the fields, finished or not. */
export function keepPlace(): void {
  addEventListener('pagehide', put)
  const [how] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[]
  const place = how?.type === 'back_forward' || how?.type === 'reload' ? found() : null
  if (!place) return
  history.scrollRestoration = 'manual'
  // After the parts of the page began to listen, and again once everything that gives the page its height is there.
  void import('./placeAgain.ts').then((m) => m.restore(place, folds(), fields(), nameOf))
  addEventListener('load', () => setTimeout(() => scrollTo(0, place.top)), { once: true })
}
