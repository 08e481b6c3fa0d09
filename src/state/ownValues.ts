import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { builds, sheetOf } from './build.ts'
import { look } from './solver/look.ts'

let last: { readonly sheet: Sheet; readonly solved: Promise<Solved> } | null = null
/** The build that is shown, solved once however many calculators, figures and live numbers ask. */
export function solvedOwn(): Promise<Solved> {
  const sheet = sheetOf(builds.get())
  if (last?.sheet !== sheet) last = { sheet, solved: look(sheet).then(({ solved }) => solved) }
  return last.solved
}
export const ownPoint = async (): Promise<Readonly<Record<string, number>>> => demoPoint(await solvedOwn())
export const ownValues = async (of: AnyCalculation): Promise<Values> => valuesFor(of, sheetOf(builds.get()), await ownPoint())
