import { hasOwn } from '../../state/own.ts'
import { system } from '../../state/system.ts'

let started = false
/** Rewrites the numbers in prose where the reader has a build or wants other units; otherwise nothing more is loaded. */
export function liveNumbers(): void {
  if (started) return
  started = true
  const own = async () => (await import('./own.ts')).fillFromOwn()
  const units = async () => (await import('./units.ts')).writeAll(system.get())
  if (hasOwn()) void own()
  else if (system.get() !== 'metric') void units()
  system.watch(() => void units())
  addEventListener('trochoid:own', () => void own())
}
