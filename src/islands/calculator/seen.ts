import { whenWanted } from '../parts/whenWanted.ts'

/**
 * Wakes each calculator of the page when the reader reaches for it. Where it would show other numbers than those the page was
 * built with, it wakes when seen: a build or units of the reader's own, or an address that carries givens.
 */
export function whenReached(): void {
  const wake = (card: HTMLElement) => import('./wake.tsx').then((m) => m.wake(card))
  for (const card of document.querySelectorAll<HTMLElement>('[data-calculator]')) {
    whenWanted(card, () => wake(card), { seen: true, now: card.dataset.alone !== undefined && location.hash.includes('=') })
  }
}
