/** Wakes each calculator of the page as it comes near the window. */
export function whenSeen(): void {
  const seen = new IntersectionObserver((entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue
      seen.unobserve(target)
      void import('./wake.tsx').then(({ wake }) => wake(target as HTMLElement))
    }
  }, { rootMargin: '200px' })
  for (const card of document.querySelectorAll('[data-calculator]')) seen.observe(card)
}
