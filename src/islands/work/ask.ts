import type { Task, Told } from './tasks.ts'

/** Gives the worker a task. The function returned stops it at once. */
export function ask(task: Task, told: (told: Told) => void): () => void {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<Told>) => {
    told(data)
    if (data.kind === 'done' || data.kind === 'failed') worker.terminate()
  }
  worker.onerror = () => told({ kind: 'failed', says: 'The work could not be started in this browser.' })
  worker.postMessage(task)
  return () => worker.terminate()
}
