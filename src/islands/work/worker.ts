import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { measureNext, rankWorth, type Worth } from '@trochoid/compute/build/measureNext.ts'
import { remediesFor, type Weigher } from '@trochoid/compute/build/remedies.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import type { Task, Told } from './tasks.ts'

/** Where this module lies, for the page that starts it as a worker. */
export const here = import.meta.url

const tell = (told: Told): void => postMessage(told)

function work({ data }: MessageEvent<Task>): void {
  const weigher: Weigher = (sheet) => weighMargins(margins, solveBuild(sheet), sheet, data.thresholds)
  try {
    if (data.kind === 'remedies') remedies(data.margin, data, weigher)
    else next(data, weigher)
    tell({ kind: 'done' })
  } catch (error) {
    tell({ kind: 'failed', says: error instanceof Error ? error.message : String(error) })
  }
}
// A page that only asks where it lies has a document; the worker has none.
if (typeof document === 'undefined' && typeof postMessage === 'function') addEventListener('message', work)

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
