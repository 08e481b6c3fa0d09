import { NoAnswer, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'

/** One output of a calculation, or nothing where these inputs have no answer. */
export function answered(of: AnyCalculation, values: Values, out: string): number | null {
  try {
    const value = of.answer(values)[out]
    return value !== undefined && Number.isFinite(value) ? value : null
  } catch (error) {
    if (error instanceof NoAnswer) return null
    throw error
  }
}

/** Values from one end to the other, both ends included. */
export const steps = (from: number, to: number, pieces: number): number[] => Array.from({ length: pieces + 1 }, (_, i) => from + ((to - from) * i) / pieces)
