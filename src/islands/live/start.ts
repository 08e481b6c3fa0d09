import { followed, ready } from '../../state/own.ts'
import { system } from '../../state/system.ts'

let started = false
/** Rewrites the numbers in prose where the reader has a build or wants other units; otherwise nothing more is loaded. */
export function liveNumbers(): void {
  if (started) return
  started = true
  let filled = false
  const own = async () => {
    if (filled) return
    filled = true
    await ready
    await (await import('./own.ts')).fillFromOwn()
  }
  const units = async () => (await import('./units.ts')).writeAll(system.get())
  if (followed.get()) void own()
  else if (system.get() !== 'metric') void units()
  system.watch(() => void units())
  followed.watch(() => void own())
}
