import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { builds, sheetOf } from './build.ts'

let last: { sheet: Sheet; solved: Solved } | null = null
/** The build that is shown, solved once however many calculators and live numbers ask. */
export function solvedOwn(): Solved {
  const sheet = sheetOf(builds.get())
  if (last?.sheet !== sheet) last = { sheet, solved: solveBuild(sheet) }
  return last.solved
}
export const ownValues = (of: AnyCalculation): Values => valuesFor(of, sheetOf(builds.get()), demoPoint(solvedOwn()))
