import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

/** The invented build whose numbers every page is made with. */
export const demo = builds.street
export const solvedDemo = solveBuild(demo)
export const pointOfDemo = demoPoint(solvedDemo)

export const demoValues = (of: AnyCalculation): Values => valuesFor(of, demo, pointOfDemo)
