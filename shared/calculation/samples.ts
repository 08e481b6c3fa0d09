import { isQuantity } from '../quantity/quantity.ts'
import { type AnyCalculation, type Values } from './calculation.ts'

/** Start values of a calculation that stand in no build: what a field or a free input begins with, the middle of a point value's range. */
export function startValues(of: AnyCalculation): Values {
  return Object.fromEntries(Object.entries(of.in).map(([name, input]) => {
    if (input.origin === 'free') return [name, input.default]
    if (input.origin === 'field') {
      if (input.start !== null || 'optional' in input) return [name, input.start]
    }
    return [name, isQuantity(input.shape) ? middle(input.shape.range, input.shape.whole) : null]
  }))
}
const middle = ([low, high]: readonly [number, number], whole?: true): number => (whole ? Math.round((low + high) / 2) : (low + high) / 2)

/** Inputs drawn over their sensible ranges by a fixed sequence, so that every run of a test meets the same ones. */
export function sampleValues(of: AnyCalculation, index: number): Values {
  const start = startValues(of)
  return Object.fromEntries(Object.entries(of.in).map(([name, input], k) => {
    const u = fraction(index * 31 + k * 7 + 1)
    if (isQuantity(input.shape)) {
      const [low, high] = input.shape.range
      const value = low + (high - low) * u
      return [name, input.shape.whole ? Math.round(value) : value]
    }
    if (input.shape.kind === 'choice') {
      const list = Object.keys(input.shape.choices)
      return [name, list[Math.floor(u * list.length)]]
    }
    return [name, start[name]]
  }))
}
/** A well-spread fraction for each whole number: the fractional part of multiples of the golden ratio, scrambled. */
const fraction = (n: number): number => { const x = Math.sin(n * 12.9898) * 43758.5453; return x - Math.floor(x) }
