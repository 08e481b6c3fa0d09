import type { Task, Told } from './tasks.ts'

export const newWorker = (): Worker => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })

/** Gives a worker of its own a long task. The function returned stops it at once. */
export function ask(task: Task, told: (told: Told) => void): () => void {
  const worker = newWorker()
  worker.onmessage = ({ data }: MessageEvent<Told>) => {
    told(data)
    if (data.kind === 'done' || data.kind === 'failed') worker.terminate()
  }
  worker.onerror = () => told({ kind: 'failed', says: 'The work could not be started in this browser.' })
  worker.postMessage(task)
  return () => worker.terminate()
}
