import { valuesFor } from '@trochoid/compute/build/demo.ts'
import { NoAnswer, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import type { Build } from './figure.ts'

type Numbers = Readonly<Record<string, number>>

/** A calculation with a build's numbers, to be answered with some of them changed; null where there is no answer. */
export function asked(of: AnyCalculation, { sheet, point }: Pick<Build, 'sheet' | 'point'>) {
  const given = valuesFor(of, sheet, point)
  return {
    given: (name: string): number => given[name] as number,
    at: (over: Values = {}): Numbers | null => {
      try { return of.answer({ ...given, ...over }) } catch (error) {
        if (error instanceof NoAnswer) return null
        throw error
      }
    },
  }
}

/** What was found at each of some values, without those that have no answer. */
export const over = <T>(values: readonly number[], at: (value: number) => T | null): T[] => values.flatMap((value) => at(value) ?? [])
