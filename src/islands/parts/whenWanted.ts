import { followed, hasOwn, ready } from '../../state/own.ts'
import { system } from '../../state/system.ts'
import { missed } from './missed.ts'

type How = { /** Wait until it comes near the window. */ readonly seen?: true; /** It has something of its own to show. */ readonly now?: boolean }
const reaching = ['pointerover', 'focusin', 'touchstart', 'keydown'] as const

/**
 * Wakes a part of the page when it is needed: by itself where the reader has a build or other units, else when they first reach for it.
 * Until then the page is what it was built as, and none of the model's code is loaded. What is pressed or typed meanwhile is done once the code is there.
 */
export function whenWanted(root: HTMLElement, load: () => Promise<unknown>, how: How = {}): void {
  let woken = false
  const early = missed(root)
  const wake = () => {
    if (woken) return
    woken = true
    for (const name of reaching) root.removeEventListener(name, wake)
    void ready.then(load).then(() => { root.dataset.live = ''; early.again() }, (error: unknown) => {
      // Most often a connection that broke: the next reach tries again, and what was typed is still kept. The fault is not hidden.
      woken = false
      listen()
      throw error
    })
  }
  const listen = () => { for (const name of reaching) root.addEventListener(name, wake, { passive: true }) }
  let waits = false
  const byItself = () => {
    if (!how.seen) return wake()
    if (waits) return
    waits = true
    const seen = new IntersectionObserver(([entry]) => { if (entry?.isIntersecting) { seen.disconnect(); wake() } }, { rootMargin: '200px' })
    seen.observe(root)
  }
  if (how.now || hasOwn() || system.get() !== 'metric') return byItself()
  listen()
  system.watch(byItself)
  // The reader's first build may come from another part of this page.
  followed.watch(byItself)
}
