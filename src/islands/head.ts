import { url } from '../url.ts'
import { chooseSystem, system } from '../state/system.ts'

/** The reader's units, and `/` for search. */
export function head(): void {
  const button = document.querySelector<HTMLButtonElement>('.top .units')
  if (button) {
    const name = () => { button.textContent = system.get() === 'metric' ? 'Imperial units' : 'Metric units' }
    name()
    button.hidden = false
    button.addEventListener('click', () => chooseSystem(system.get() === 'metric' ? 'imperial' : 'metric'))
    system.watch(name)
  }
  addEventListener('keydown', (event) => {
    const { target } = event
    if (event.key !== '/' || event.ctrlKey || event.metaKey || event.altKey || (target instanceof HTMLElement && /^(input|textarea|select)$/i.test(target.tagName))) return
    event.preventDefault()
    location.href = url('/search/')
  })
}
