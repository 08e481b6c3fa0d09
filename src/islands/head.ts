import { textOf } from '../state/kept.ts'
import { chooseSystem, system } from '../state/system.ts'
import { openSearch } from './search/open.ts'

/** The reader's units, search, and what must be told on any page. */
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
  if (textOf({ name: 'bench' })) void import('./bench.ts').then(({ begin }) => begin())
  openSearch()
}
