import { whenWanted } from '../../islands/parts/whenWanted.ts'
import { followed, ready } from '../../state/own.ts'
import { system } from '../../state/system.ts'

/** Wakes the figures of the page: all of them as they come near the window where other numbers or units are wanted, else those that move once they are reached for. */
export function figuresWhenSeen(): void {
  const places = [...document.querySelectorAll<HTMLElement>('[data-figure]')]
  const asks = () => followed.get() || system.get() !== 'metric'
  /** Moving with the numbers the page was built with. */
  const moving = new Set<HTMLElement>()
  const redraw = (place: HTMLElement) => import('./wake.tsx').then((m) => m.redraw(place))
  const wake = async (place: HTMLElement) => {
    if (place.dataset.live !== undefined) return
    place.dataset.live = ''
    await ready
    if (asks()) return redraw(place)
    moving.add(place)
    await (await import('./move.tsx')).move(place)
  }
  const seen = new IntersectionObserver((entries) => {
    for (const { isIntersecting, target } of entries) if (isIntersecting) { seen.unobserve(target); void wake(target as HTMLElement) }
  }, { rootMargin: '200px' })
  for (const place of places) {
    if (asks()) seen.observe(place)
    else if (place.dataset.from !== undefined) whenWanted(place, () => wake(place))
  }
  const anew = () => {
    for (const place of places) {
      // What moves and sleeps is woken by what waits for its reader.
      const still = place.dataset.live === undefined && place.dataset.from === undefined
      if (still) place.dataset.live = ''
      if (still || moving.delete(place)) void redraw(place)
    }
  }
  system.watch(anew)
  followed.watch(anew)
}
