import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { measureNext, rankWorth, type Worth } from '@trochoid/compute/build/measureNext.ts'
import { remediesFor, type Weigher } from '@trochoid/compute/build/remedies.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { solveBuild, sweepSpeeds } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { wholeModel } from '@trochoid/compute/uncertainty/wholeModel.ts'
import type { Task, Told } from './tasks.ts'

/** The whole model, in a thread of its own: pages stay quick however long it works, and none of them carries its code. */
const tell = (told: Told): void => postMessage(told)
const coarse = 12

addEventListener('message', ({ data }: MessageEvent<Task>) => {
  try {
    if (data.kind === 'fields') tell({ kind: 'fields', fields: [...allFields.values()], demos: builds })
    else if (data.kind === 'look') look(data)
    else if (data.kind === 'sample' || data.kind === 'count') void chance(data)
    else {
      const weigher: Weigher = (sheet) => weighMargins(margins, solveBuild(sheet), sheet, data.thresholds)
      if (data.kind === 'remedies') remedies(data.margin, data.sheet, weigher)
      else next(data.sheet, weigher)
      tell({ kind: 'done' })
    }
  } catch (error) { fail(error) }
})
const fail = (error: unknown): void => tell({ kind: 'failed', says: error instanceof Error ? error.message : String(error) })

function look({ turn, sheet, thresholds, fine }: Extract<Task, { kind: 'look' }>): void {
  const limit = fine ? null : valueAt(sheet, allFields.get('engine.speedLimit')!)
  const solved = typeof limit === 'number' ? solveBuild(sheet, sweepSpeeds(limit, coarse)) : solveBuild(sheet)
  tell({ kind: 'look', turn, solved, weighed: weighMargins(margins, solved, sheet, thresholds) })
}

function remedies(id: string, sheet: Sheet, weigher: Weigher): void {
  const margin = margins.find((m) => m.id === id)
  if (margin) for (const cure of remediesFor(margin, sheet, weigher)) tell({ kind: 'cure', cure })
}

function next(sheet: Sheet, weigher: Weigher): void {
  const fields = [...allFields.values()]
  const found: (Worth | null)[] = []
  for (const worth of measureNext(fields, sheet, weigher)) {
    found.push(worth)
    if (found.length % 8 === 0) tell({ kind: 'progress', done: Math.min(found.length, fields.length), all: fields.length })
  }
  tell({ kind: 'worth', worth: rankWorth(found) })
}

async function chance(task: Extract<Task, { kind: 'sample' | 'count' }>): Promise<void> {
  try {
    const { chanceTask } = await import('./chance.ts')
    chanceTask(task, wholeModel, tell)
    tell({ kind: 'done' })
  } catch (error) { fail(error) }
}
