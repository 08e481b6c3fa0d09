import { hasOwn } from '../../state/own.ts'
import { system } from '../../state/system.ts'

/** Wakes the figures of the page as they come near the window: those that move, and all of them where other numbers or units are wanted. */
export function figuresWhenSeen(): void {
  const places = document.querySelectorAll<HTMLElement>('[data-figure]')
  const asks = () => hasOwn() || system.get() !== 'metric'
  const wake = async (place: HTMLElement) => {
    if (place.dataset.live !== undefined) return
    place.dataset.live = ''
    if (asks()) await (await import('./wake.tsx')).redraw(place)
    else await (await import('./move.tsx')).move(place)
  }
  const seen = new IntersectionObserver((entries) => {
    for (const { isIntersecting, target } of entries) if (isIntersecting) { seen.unobserve(target); void wake(target as HTMLElement) }
  }, { rootMargin: '200px' })
  for (const place of places) if (place.dataset.from !== undefined || asks()) seen.observe(place)
  system.watch(() => { for (const place of places) void import('./wake.tsx').then(({ redraw }) => place.dataset.live === undefined || place.dataset.from !== undefined ? (place.dataset.live = '', redraw(place)) : undefined) })
}
