import { parentPort, workerData } from 'node:worker_threads'
import { leftsOf, workOf, type Plan } from '../uncertainty/sampling.ts'
import { wholeModel } from '../uncertainty/wholeModel.ts'

/** One thread’s share of the samples. */
const { plan, from, to } = workerData as { readonly plan: Plan; readonly from: number; readonly to: number }
const work = workOf(plan, wholeModel)
const lefts = new Float64Array((to - from) * work.weighed.length)
for (const _ of leftsOf(work, wholeModel, from, to, lefts)) { /* every item */ }
parentPort!.postMessage(lefts)
