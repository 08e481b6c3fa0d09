import { useEffect, useRef, useState } from 'preact/hooks'
import { drives } from '../../state/drives/ask.ts'
import type { Task, Told } from '../../state/drives/tasks.ts'

export type Answer = Exclude<Told, { kind: 'progress' | 'failed' }>

/**
 * Work that is done beside the page and can be stopped. While one task runs, the next waits, and of those of one kind only the last: a
 * build that is being typed is reckoned as it stands, not as it stood on the way.
 */
export function useDrives(answered: (answer: Answer) => void) {
  const [part, setPart] = useState<number | null>(null)
  const [fault, setFault] = useState('')
  const heard = useRef(answered)
  heard.current = answered
  const worker = useRef<ReturnType<typeof drives> | null>(null)
  const now = useRef<{ busy: boolean; waiting: readonly Task[] }>({ busy: false, waiting: [] })

  const send = (task: Task): void => {
    now.current.busy = true
    setFault('')
    setPart(0)
    worker.current ??= drives(hear)
    worker.current.ask(task)
  }
  const hear = (told: Told): void => {
    if (told.kind === 'progress') return setPart(told.part)
    now.current.busy = false
    setPart(null)
    if (told.kind === 'failed') setFault(told.says)
    else heard.current(told)
    const [next, ...later] = now.current.waiting
    if (!next || now.current.busy) return
    now.current.waiting = later
    send(next)
  }
  useEffect(() => () => worker.current?.stop(), [])
  return {
    /** How much is done; null while nothing runs. */
    part,
    fault,
    ask(task: Task): void {
      if (!now.current.busy) return send(task)
      now.current.waiting = [...now.current.waiting.filter(({ kind }) => kind !== task.kind), task]
    },
    stop(): void {
      worker.current?.stop()
      now.current = { busy: false, waiting: [] }
      setPart(null)
    },
  }
}
