import { hasOwn } from '../../state/own.ts'
import { system } from '../../state/system.ts'

/**
 * Wakes a part of the page when it is needed: at once where the reader has a build or other units, else when they first reach for it.
 * Until then the page is what it was built as, and none of the model's code is loaded.
 */
export function whenWanted(root: Element, load: () => Promise<unknown>): void {
  const reaching = ['pointerover', 'focusin', 'touchstart', 'keydown'] as const
  let woken = false
  const wake = () => {
    if (woken) return
    woken = true
    for (const name of reaching) root.removeEventListener(name, wake)
    void load().then(() => { (root as HTMLElement).dataset.live = '' })
  }
  if (hasOwn() || system.get() !== 'metric') return wake()
  for (const name of reaching) root.addEventListener(name, wake, { passive: true })
  system.watch(wake)
}
