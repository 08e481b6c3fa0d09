import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import type { Read, Refused } from '@trochoid/compute/quantity/read.ts'
import type { readText as ReadText } from './reader.ts'
import { inUnit } from '@trochoid/compute/quantity/write.ts'

type Reader = { readonly readText: typeof ReadText }
let reader: Reader | null = null
/** Fetches the reader of typed text: when a field is first entered, so that it is there before the first key. */
export const fetchReader = async (): Promise<Reader> => (reader ??= await import('./reader.ts'))

/** Reads what was typed. */
export function readTyped(text: string, of: Quantity, unit: string): Read | Refused | Promise<Read | Refused> {
  return reader ? reader.readText(text, of, unit) : fetchReader().then((r) => r.readText(text, of, unit))
}

/** A number as a field holds it: digits that can be typed again. */
export const numberText = (si: number, of: Quantity, unit: string): string => String(Number(inUnit(si, of, unit).toPrecision(of.whole ? 15 : 5))).replace('-', '−')
