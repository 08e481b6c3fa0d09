import { url } from '../url.ts'
import { chooseSystem, system } from '../state/system.ts'

/** The reader's units, `/` for search, and what must be told on any page. */
export function head(): void {
  const button = document.querySelector<HTMLButtonElement>('.top .units')
  if (button) {
    const name = () => { button.textContent = system.get() === 'metric' ? 'Imperial units' : 'Metric units' }
    name()
    button.hidden = false
    button.addEventListener('click', () => chooseSystem(system.get() === 'metric' ? 'imperial' : 'metric'))
    system.watch(name)
  }
  const notices = () => void import('./notices/wake.tsx').then(({ wakeNotices }) => wakeNotices())
  const sends = () => location.hash.startsWith('#build=')
  if (sends()) notices()
  addEventListener('trochoid:notice', notices)
  // An address pasted over this page brings a build: it opens as in a page of its own. Leaving is asked for first where something is not kept.
  addEventListener('hashchange', () => { if (sends()) location.reload() })
  addEventListener('keydown', (event) => {
    const { target } = event
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || (target instanceof HTMLElement && /^(input|textarea|select)$/i.test(target.tagName))) return
    event.preventDefault()
    location.href = url('/search/')
  })
}
