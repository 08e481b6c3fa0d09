import { demoPoint, valuesFor } from '@trochoid/compute/build/demo.ts'
import type { Weighed } from '@trochoid/compute/build/margins.ts'
import type { Solved } from '@trochoid/compute/build/point.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { sheetOf } from './build.ts'
import { builds } from './own.ts'
import { allFields, look } from './solver/look.ts'

type Looked = { readonly solved: Solved; readonly weighed: readonly Weighed[] }
let last: { readonly sheet: Sheet; readonly looked: Promise<Looked> } | null = null
/** The build that is shown, solved and weighed once however many calculators, figures and live numbers ask. */
export async function lookedOwn(): Promise<Looked> {
  await allFields()
  const sheet = sheetOf(builds.get())
  if (last?.sheet !== sheet) last = { sheet, looked: look(sheet) }
  return last.looked
}
export const solvedOwn = async (): Promise<Solved> => (await lookedOwn()).solved
export const ownPoint = async (): Promise<Readonly<Record<string, number>>> => demoPoint(await solvedOwn())
export const ownValues = async (of: AnyCalculation): Promise<Values> => valuesFor(of, sheetOf(builds.get()), await ownPoint())
