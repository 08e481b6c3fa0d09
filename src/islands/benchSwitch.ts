import { bench, switchBench } from './bench.ts'

/** The switch of bench mode, and what is to be known while it is on. */
export function benchSwitch(button: HTMLButtonElement, status: HTMLElement): void {
  const tell = () => {
    const { on, awake } = bench.get()
    button.setAttribute('aria-pressed', String(on))
    status.textContent = !on ? '' : awake === 'yes' ? 'On, for every page. The screen stays awake while one of them is open.' : awake === 'refused' ? 'On, for every page. This browser does not keep the screen awake: set the device’s own time for it.' : 'On, for every page.'
  }
  bench.watch(tell)
  button.hidden = false
  button.addEventListener('click', () => switchBench(!bench.get().on))
  tell()
}
