import { chancesOf } from '@trochoid/compute/uncertainty/chances.ts'
import { leftsOf, workOf } from '@trochoid/compute/uncertainty/sampling.ts'
import { wholeModel } from '@trochoid/compute/uncertainty/wholeModel.ts'
import { packed } from '../islands/chance/packed.ts'
import { demo } from './demo.ts'

/** Few enough that the site is built in a few seconds; the page draws as many as its reader asks. */
const samples = 500
const seed = 1
const work = workOf({ sheet: demo, thresholds: {}, tolerances: {}, samples, seed }, wholeModel)
const lefts = new Float64Array(work.items * work.weighed.length)
for (const _ of leftsOf(work, wholeModel, 0, work.items, lefts)) { /* every item */ }

/** The chances of the demo build as its page begins with them. */
export const demoChances = { chances: chancesOf(work, lefts).map(packed), samples, seed }
