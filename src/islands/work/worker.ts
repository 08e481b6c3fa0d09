import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { measureNext, rankWorth, type Worth } from '@trochoid/compute/build/measureNext.ts'
import { remediesFor, type Weigher } from '@trochoid/compute/build/remedies.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import type { Task, Told } from './tasks.ts'

const tell = (told: Told): void => postMessage(told)

addEventListener('message', ({ data }: MessageEvent<Task>) => {
  const weigher: Weigher = (sheet) => weighMargins(margins, solveBuild(sheet), sheet, data.thresholds)
  try {
    if (data.kind === 'remedies') remedies(data.margin, data, weigher)
    else next(data, weigher)
    tell({ kind: 'done' })
  } catch (error) {
    tell({ kind: 'failed', says: error instanceof Error ? error.message : String(error) })
  }
})

function remedies(id: string, { sheet }: Task, weigher: Weigher): void {
  const margin = margins.find((m) => m.id === id)
  if (margin) for (const cure of remediesFor(margin, sheet, weigher)) tell({ kind: 'cure', cure })
}

function next({ sheet }: Task, weigher: Weigher): void {
  const fields = [...allFields.values()]
  const found: (Worth | null)[] = []
  for (const worth of measureNext(fields, sheet, weigher)) {
    found.push(worth)
    if (found.length % 8 === 0) tell({ kind: 'progress', done: Math.min(found.length, fields.length), all: fields.length })
  }
  tell({ kind: 'worth', worth: rankWorth(found) })
}
