import { isQuantity, type Shape } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, write } from '@trochoid/compute/quantity/write.ts'

/** What a sum, a fraction, a hose size or a comma was read as. Nothing where the typed number itself is the one that counts: a field holds five figures of it. */
export function heard(text: string, value: unknown, shape: Shape, unit: string): string | undefined {
  if (!isQuantity(shape) || typeof value !== 'number' || text.trim() === '') return undefined
  const counts = inUnit(value, shape, unit)
  return Math.abs(Number.parseFloat(text.replace('−', '-')) - counts) <= 1e-4 * Math.abs(counts) ? undefined : write(value, shape, unit, 4)
}
