import type { Task, Told } from './tasks.ts'

/** Gives the worker a task. The function returned stops it at once. */
export function ask(task: Task, told: (told: Told) => void): () => void {
  let worker: Worker | undefined
  let stopped = false
  // The worker is a module of the page like any other, run once more beside it: it shares every file the page has loaded.
  import('./worker.ts').then(({ here }) => {
    if (stopped) return
    worker = new Worker(here, { type: 'module' })
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      told(data)
      if (data.kind === 'done' || data.kind === 'failed') worker?.terminate()
    }
    worker.onerror = () => told({ kind: 'failed', says: 'The work could not be started in this browser.' })
    worker.postMessage(task)
  }, () => told({ kind: 'failed', says: 'The work could not be loaded.' }))
  return () => { stopped = true; worker?.terminate() }
}
