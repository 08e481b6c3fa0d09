import { isQuantity } from '../quantity/quantity.ts'
import { untraced } from '../formula/trace.ts'
import { NoAnswer, type AnyCalculation, type Values } from './calculation.ts'

/** One output over one input; null where there is no answer, which stays a gap in the chart. */
export type Drawn = { readonly x: readonly number[]; readonly y: readonly (number | null)[] }

export function curveOver(of: AnyCalculation, values: Values, input: string, output: string, points = 65): Drawn {
  const shape = of.in[input]!.shape
  if (!isQuantity(shape)) throw new RangeError(`${input} is no number to draw over`)
  const now = values[input]
  const low = typeof now === 'number' ? Math.min(shape.range[0], now) : shape.range[0]
  const high = typeof now === 'number' ? Math.max(shape.range[1], now) : shape.range[1]
  const steps = shape.whole ? Math.min(points - 1, high - low) : points - 1
  return untraced(() => {
    const x = Array.from({ length: steps + 1 }, (_, i) => (shape.whole ? Math.round(low + ((high - low) * i) / steps) : low + ((high - low) * i) / steps))
    const y = x.map((value) => {
      try {
        const out = of.answer({ ...values, [input]: value })[output]!
        return Number.isFinite(out) ? out : null
      } catch (error) { if (error instanceof NoAnswer) return null; throw error }
    })
    return { x, y }
  })
}
