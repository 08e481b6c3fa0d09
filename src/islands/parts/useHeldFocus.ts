import type { RefObject } from 'preact'
import { useLayoutEffect } from 'preact/hooks'

/** Sorting a list moves its elements, and a browser takes the focus from one that moves: it is given back, at the height where it stood. */
export function useHeldFocus(list: RefObject<HTMLElement>): void {
  const held = list.current?.contains(document.activeElement) ? (document.activeElement as HTMLElement) : null
  const top = held?.getBoundingClientRect().top ?? 0
  useLayoutEffect(() => {
    if (!held?.isConnected) return
    if (document.activeElement !== held) held.focus({ preventScroll: true })
    const moved = held.getBoundingClientRect().top - top
    if (moved !== 0) scrollBy({ top: moved, behavior: 'instant' })
  })
}
