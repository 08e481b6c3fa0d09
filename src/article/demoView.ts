import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { measureNext, rankWorth } from '@trochoid/compute/build/measureNext.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { store } from '../state/store.ts'
import type { View } from '../state/view.ts'
import { demo, solvedDemo } from './demo.ts'

/** The demo build solved and weighed, as the pages that show a whole build begin. */
export const demoView = store<View>({ sheet: demo, solved: solvedDemo, weighed: weighMargins(margins, solvedDemo, demo), fine: true, fields: allFields })

/** What to measure next of the demo build, worked out once for all pages; few enough to carry on a page, and in few figures. */
export const demoNext = rankWorth([...measureNext([...allFields.values()], demo, (sheet) => weighMargins(margins, solveBuild(sheet), sheet))]).slice(0, 10).map((next) => ({ ...next, moves: Number(next.moves.toPrecision(4)) }))
