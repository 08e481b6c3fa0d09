import { isQuantity, type Shape } from '@trochoid/compute/quantity/quantity.ts'
import { shownUnit, write, type System } from '@trochoid/compute/quantity/write.ts'

/** A value as its reader sees it, number or word. */
export function written(value: unknown, shape: Shape, system: System, figures = 3): string {
  if (value === null || value === undefined) return 'not known'
  if (isQuantity(shape)) return typeof value === 'number' ? write(value, shape, shownUnit(shape, system), figures) : '–'
  if (shape.kind === 'choice') return (shape.choices as Readonly<Record<string, string>>)[String(value)] ?? String(value)
  return typeof value === 'string' ? value : shape.name.toLowerCase()
}

/** A sentence with its `{names}` written in the reader's units. */
export const say = (sentence: string, shapes: Readonly<Record<string, Shape>>, values: Readonly<Record<string, unknown>>, system: System): string =>
  sentence.replace(/\{(\w+)\}/g, (whole, name: string) => (shapes[name] ? written(values[name], shapes[name], system) : whole))
