import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'

type Files = Readonly<Record<string, () => Promise<unknown>>>
/** One list of names for each discipline: a page that shows one calculator carries the names of its neighbours only. */
const lists = import.meta.glob<{ files: Files }>('./loaders/*.ts')

/** Loads one calculation by the file it lies in, `fuel/injectorDuty`, with the formulas it calls and nothing else. */
export async function loadCalculation(file: string): Promise<AnyCalculation> {
  const list = await lists[`./loaders/${file.split('/')[0]!}.ts`]?.()
  const load = list?.files[`/shared/${file}.calc.ts`]
  if (!load) throw new Error(`There is no calculation ${file}.`)
  return ((await load()) as { default: AnyCalculation }).default
}
