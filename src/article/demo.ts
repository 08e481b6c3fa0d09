import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

import { demoSheets } from '../state/solver/look.ts'

/** The invented build whose numbers every page is made with. */
export const demo = builds.street
// The pages show the invented builds before any solver runs in the browser.
demoSheets.set(builds)
export const solvedDemo = solveBuild(demo)
export const pointOfDemo = demoPoint(solvedDemo)

export const demoValues = (of: AnyCalculation): Values => valuesFor(of, demo, pointOfDemo)
