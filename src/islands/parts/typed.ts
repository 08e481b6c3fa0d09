import { type Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { read, type Read, type Refused } from '@trochoid/compute/quantity/read.ts'
import { inUnit } from '@trochoid/compute/quantity/write.ts'

/** Reads what was typed; a sum is read by mathjs, which loads when the first one is met. */
export function readTyped(text: string, of: Quantity, unit: string): Read | Refused | Promise<Read | Refused> {
  const first = read(text, of, unit)
  if (first.ok !== 'arithmetic') return first
  return import('@trochoid/compute/quantity/arithmetic.ts').then(
    ({ readArithmetic }) => readArithmetic(first.text, of, unit, first.at === undefined ? {} : { at: first.at }),
    () => ({ ok: false, fault: 'syntax', says: 'The reader of sums could not be loaded. Type the result of the sum.' }) as const,
  )
}

/** A number as a field holds it: digits that can be typed again. */
export const numberText = (si: number, of: Quantity, unit: string): string => String(Number(inUnit(si, of, unit).toPrecision(of.whole ? 15 : 5))).replace('-', '−')
