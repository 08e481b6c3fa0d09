import type { Kind } from '@trochoid/compute/quantity/kinds.ts'
import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { write, type System } from '@trochoid/compute/quantity/write.ts'

/** How one value of a step is written: a number by its kind and the units of both systems, a choice by its words, a constant as it stands. */
export type Way = {
  readonly name: string
  readonly kind?: Kind
  readonly units?: readonly [string, string]
  readonly choices?: Readonly<Record<string, string>>
  readonly fixed?: string
}
/** Places of a step, `i.drop` or `o.out`, and how each is written. */
export type Ways = Readonly<Record<string, Way>>

export function writeValue(value: unknown, way: Way, system: System): string {
  if (way.fixed !== undefined) return way.fixed
  if (typeof value === 'number' && way.kind && way.units) {
    const of = { kind: way.kind, name: way.name } as Quantity
    return short(write(value, of, way.units[system === 'metric' ? 0 : 1], 4))
  }
  if (typeof value === 'string') return way.choices?.[value] ?? value
  if (value === null || value === undefined) return 'not given'
  return way.name.toLowerCase()
}

/** Without zeros that only fill the last places: `650`, not `650.0`. */
export const short = (text: string): string => text.replace(/(\.\d*?)0+(?!\d)/, (_, kept: string) => (kept === '.' ? '' : kept))

/** The value that a place names, in what the trace recorded of one step. */
export function valueAtPlace(place: string, step: { readonly in: Readonly<Record<string, unknown>>; readonly out: unknown }): unknown {
  const [side, name = ''] = place.split('.') as [string, string]
  if (side === 'i') return step.in[name]
  if (side !== 'o') return undefined
  return typeof step.out === 'object' && step.out !== null ? (step.out as Readonly<Record<string, unknown>>)[name] : step.out
}
