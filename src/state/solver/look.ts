import type { Field } from '@trochoid/compute/build/field.ts'
import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { store, type Store } from '../store.ts'
import { thresholds } from '../thresholds.ts'
import { newWorker } from './ask.ts'
import type { Task, Told } from './tasks.ts'

let worker: Worker | undefined
const waiting = new Map<string, { readonly done: (told: Told) => void; readonly failed: (error: Error) => void }>()

function send<K extends Told['kind']>(key: string, task: Task): Promise<Extract<Told, { kind: K }>> {
  worker ??= begin()
  return new Promise((done, failed) => {
    waiting.set(key, { done: (told) => done(told as Extract<Told, { kind: K }>), failed })
    worker!.postMessage(task)
  })
}
function begin(): Worker {
  const made = newWorker()
  made.onmessage = ({ data }: MessageEvent<Told>) => {
    if (data.kind === 'failed') return fail(data.says)
    const key = data.kind === 'look' ? `look ${data.turn}` : data.kind
    waiting.get(key)?.done(data)
    waiting.delete(key)
  }
  made.onerror = () => fail('The model could not be started in this browser.')
  return made
}
function fail(says: string): void {
  for (const { failed } of waiting.values()) failed(new Error(says))
  waiting.clear()
}

/** The invented builds by name, once the solver has told of them. */
export const demoSheets: Store<Readonly<Record<string, Sheet>>> = store({})

let fields: Promise<ReadonlyMap<string, Field>> | undefined
/** Every field of the build sheet by path, as the solver declares it. */
export const allFields = (): Promise<ReadonlyMap<string, Field>> =>
  (fields ??= send<'fields'>('fields', { kind: 'fields' }).then((told) => {
    demoSheets.set(told.demos)
    return new Map(told.fields.map((f) => [f.path, f]))
  }))

let turn = 0
/** Solves and weighs a build. */
export async function look(sheet: Sheet, fine = true): Promise<{ readonly solved: Solved; readonly weighed: readonly Weighed[] }> {
  const mine = ++turn
  return send<'look'>(`look ${mine}`, { kind: 'look', turn: mine, sheet, thresholds: thresholds.get(), fine })
}
