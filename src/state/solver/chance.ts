import { chancesOf } from '@trochoid/compute/uncertainty/chances.ts'
import { leftsOf, workOf, type Model } from '@trochoid/compute/uncertainty/sampling.ts'
import type { Task, Told } from './tasks.ts'

/** Every how many items a page is told how far the work is. */
const tellEvery = 20

/** A share of the samples, or the count over all of them; loaded into the solver when the first chance is asked. */
export function chanceTask(task: Extract<Task, { kind: 'sample' | 'count' }>, model: Model, tell: (told: Told) => void): void {
  const work = workOf(task.plan, model)
  if (task.kind === 'count') return tell({ kind: 'chances', chances: chancesOf(work, task.lefts) })
  const { from, to } = task
  const lefts = new Float64Array((to - from) * work.weighed.length)
  for (const done of leftsOf(work, model, from, to, lefts)) if (done % tellEvery === 0) tell({ kind: 'progress', done, all: to - from })
  tell({ kind: 'sampled', lefts })
}
