import { isQuantity } from '../quantity/quantity.ts'
import { untraced } from '../formula/trace.ts'
import { NoAnswer, numericInputs, type AnyCalculation, type Values } from './calculation.ts'

/** How far each output moves when one input moves by its tolerance step, up and down. null: no answer there. */
export type Move = { readonly input: string; readonly step: number; readonly up: Readonly<Record<string, number | null>>; readonly down: Readonly<Record<string, number | null>> }

export function moves(of: AnyCalculation, values: Values): readonly Move[] {
  return untraced(() => {
    const here = of.answer(values)
    const changed = (input: string, to: number): Record<string, number | null> => {
      try {
        const there = of.answer({ ...values, [input]: to })
        return Object.fromEntries(Object.keys(of.out).map((name) => [name, there[name]! - here[name]!]))
      } catch (error) {
        if (error instanceof NoAnswer) return Object.fromEntries(Object.keys(of.out).map((name) => [name, null]))
        throw error
      }
    }
    return numericInputs(of).filter((name) => typeof values[name] === 'number').map((input) => {
      const shape = of.in[input]!.shape
      const step = isQuantity(shape) ? shape.step : 0
      const at = values[input] as number
      return { input, step, up: changed(input, at + step), down: changed(input, at - step) }
    })
  })
}
