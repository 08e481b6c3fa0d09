import { quantityOf, type AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import type { Quantity, Shape } from '@trochoid/compute/quantity/quantity.ts'

/** Shapes of all inputs and outputs by name. */
export const shapesOf = (of: AnyCalculation): Record<string, Shape> => ({
  ...Object.fromEntries(Object.entries(of.in).map(([name, input]) => [name, input.shape])),
  ...Object.fromEntries(Object.entries(of.out).map(([name, out]) => [name, quantityOf(out)])),
})
/** The name of an output as its reader sees it. */
export const outLabel = (of: AnyCalculation, name: string): string => { const out = of.out[name]!; return ('label' in out && out.label) || quantityOf(out).name }
export const outQuantity = (of: AnyCalculation, name: string): Quantity => quantityOf(of.out[name]!)
