import { isQuantity } from '@trochoid/compute/quantity/quantity.ts'
import { plain, unitOf } from '@trochoid/compute/quantity/units.ts'
import { inUnit } from '@trochoid/compute/quantity/write.ts'
import type { State } from './model.ts'

/** Givens as they stand in an address: `speed=7000_rpm&drop=3_bar`. Curves and maps are left to the build. */
export function linkText({ of, values, units }: State): string {
  return Object.entries(of.in).flatMap(([name, { shape }]) => {
    const value = values[name]
    if (isQuantity(shape)) return typeof value === 'number' ? [`${name}=${spelt(Number(inUnit(value, shape, units[name]!).toPrecision(9)), shape.kind, units[name]!)}`] : []
    return typeof value === 'string' ? [`${name}=${encodeURIComponent(value)}`] : []
  }).join('&')
}
const spelt = (value: number, kind: Parameters<typeof unitOf>[0], unit: string): string => {
  if (unit === '1') return String(value)
  const { name, also } = unitOf(kind, unit)
  // A spelling that addresses carry as it is: cm3/min, degC, um.
  const bare = [name, ...also].map(plain).find((s) => /^[\w/ ().-]+$/.test(s)) ?? encodeURIComponent(name)
  return `${value}_${bare.replaceAll(' ', '_')}`
}
