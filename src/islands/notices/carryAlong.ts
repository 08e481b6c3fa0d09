import { buildFragment, buildIn } from '@trochoid/compute/link/fragment.ts'
import { builds, sentChosen } from '../../state/own.ts'

/**
 * While a build that was sent is shown, links of the page lead on with it: its code is carried in the address, so that
 * reloading, going back and keeping the address as a bookmark all find it, and nothing need be stored.
 */
export function carryAlong(): void {
  const { code, at } = buildIn(location.hash)!
  const follow = (event: MouseEvent) => {
    const link = (event.target as Element).closest?.<HTMLAnchorElement>('a[href]')
    if (!link || builds.get().chosen !== sentChosen) return
    const to = new URL(link.href)
    if (to.origin !== location.origin || to.hash.includes('=')) return
    const place = to.hash.slice(1)
    if (to.pathname === location.pathname && place !== '') {
      event.preventDefault()
      history.replaceState(null, '', buildFragment(code, place))
      return show(place)
    }
    to.hash = buildFragment(code, place)
    link.href = to.href
  }
  addEventListener('click', follow, { capture: true })
  addEventListener('auxclick', follow, { capture: true })
  if (at !== '') show(at)
}

function show(id: string): void {
  const place = document.getElementById(decodeURIComponent(id))
  place?.scrollIntoView()
  place?.focus({ preventScroll: true })
}
