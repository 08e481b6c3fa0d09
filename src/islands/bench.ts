import { forget, load, save, type Key } from '../state/kept.ts'
import { store } from '../state/store.ts'

/** Kept only while it is on. */
const key: Key<true> = { name: 'bench', version: 1, bound: 100, read: (data) => (data === true ? data : null) }

/** For gloves and an arm's length: large type, high controls, room between them. Paper stays as it is. */
const large = `@media screen {
  :root { font-size: 125%; }
  button, .button, select, summary, textarea, input:not([type=checkbox], [type=radio]), nav a { min-height: 64px; }
  nav a, summary { display: inline-flex; align-items: center; }
  input[type=checkbox], input[type=radio] { width: 2rem; height: 2rem; }
  .row { gap: 1rem; }
  [data-bench][aria-pressed=true] { background: var(--accent); color: var(--paper); }
  @media (min-width: 60rem) { :root { font-size: 140%; } }
}`

/** Whether bench mode is on, and what the browser says to keeping the screen awake. */
export const bench = store<{ readonly on: boolean; readonly awake: 'yes' | 'no' | 'refused' }>({ on: false, awake: 'no' })

let sheet: CSSStyleSheet | null = null
let lock: WakeLockSentinel | null = null

/** Puts a page that is opened while bench mode is on into it. */
export function begin(): void { if (load(key).found === 'value') turn(true) }

export function switchBench(on: boolean): void {
  if (on) save(key, true)
  else forget(key)
  turn(on)
}

function turn(on: boolean): void {
  bench.set({ on, awake: 'no' })
  // A constructed sheet: a style element would be against the page's policy.
  if (!sheet) { sheet = new CSSStyleSheet(); sheet.replaceSync(large); document.adoptedStyleSheets.push(sheet) }
  sheet.disabled = !on
  if (on) {
    document.addEventListener('visibilitychange', stayAwake)
    return void stayAwake()
  }
  document.removeEventListener('visibilitychange', stayAwake)
  void lock?.release()
  lock = null
}

/** The browser lets the screen sleep again whenever the page is hidden: it is asked each time the page comes back. */
async function stayAwake(): Promise<void> {
  if (document.visibilityState !== 'visible') return
  try {
    const held = await navigator.wakeLock.request('screen')
    // Switched off while the browser was thinking.
    if (!bench.get().on) return void held.release()
    lock = held
    bench.set({ on: true, awake: 'yes' })
  } catch { if (bench.get().on) bench.set({ on: true, awake: 'refused' }) }
}
