import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { read, type Read, type Refused } from '@trochoid/compute/quantity/read.ts'

/** Reads a number, a number with its unit, or a sum; a sum is read by mathjs, which loads when the first one is met. */
export function readText(text: string, of: Quantity, unit: string): Read | Refused | Promise<Read | Refused> {
  const first = read(text, of, unit)
  if (first.ok !== 'arithmetic') return first
  return import('@trochoid/compute/quantity/arithmetic.ts').then(
    ({ readArithmetic }) => readArithmetic(first.text, of, unit, first.at === undefined ? {} : { at: first.at }),
    () => ({ ok: false, fault: 'syntax', says: 'The reader of sums could not be loaded. Type the result of the sum.' }) as const,
  )
}
