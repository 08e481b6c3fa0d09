import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'

const files = import.meta.glob<{ default: AnyCalculation }>('/shared/*/*.calc.ts')

/** Loads one calculation by the file it lies in, `fuel/injectorDuty`, with the formulas it calls and nothing else. */
export async function loadCalculation(file: string): Promise<AnyCalculation> {
  const load = files[`/shared/${file}.calc.ts`]
  if (!load) throw new Error(`There is no calculation ${file}.`)
  return (await load()).default
}
