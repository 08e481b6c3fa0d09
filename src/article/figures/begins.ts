import type { AnyCalculation, Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'

/** A calculation with the numbers it begins with, for a figure of what no build sheet states. */
export function begins(of: AnyCalculation) {
  const given = startValues(of) as Readonly<Record<string, number>>
  return { given: (name: string): number => given[name]!, at: (over: Values = {}): Readonly<Record<string, number>> => of.answer({ ...given, ...over }) }
}
