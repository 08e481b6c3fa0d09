import type { Task, Told } from './tasks.ts'

/** A worker that is kept: a log stays open in it. `stop` ends it and all that it holds; the next task begins a new one. */
export function drives(told: (told: Told) => void): { readonly ask: (task: Task) => void; readonly stop: () => void } {
  let worker: Worker | null = null
  const begin = (): Worker => {
    const made = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
    made.onmessage = ({ data }: MessageEvent<Told>) => told(data)
    made.onerror = () => told({ kind: 'failed', says: 'The work could not be started in this browser.' })
    return made
  }
  return { ask: (task) => (worker ??= begin()).postMessage(task), stop: () => { worker?.terminate(); worker = null } }
}
