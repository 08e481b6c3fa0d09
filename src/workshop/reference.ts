import { quantity } from '@trochoid/compute/quantity/quantity.ts'

/** Conditions that a compressor map is corrected to, as its picture or its table states them. */
export const reference = {
  temperature: quantity('Reference temperature of the map', 'T_ref', 'temperature', [273.15, 313.15], 0.5),
  pressure: quantity('Reference pressure of the map', 'p_ref', 'pressure', [90_000, 105_000], 100),
}
