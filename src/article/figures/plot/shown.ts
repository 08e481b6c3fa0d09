import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, shownUnit, write, type System } from '@trochoid/compute/quantity/write.ts'

/** A quantity as the reader of a system sees it: its unit, its numbers, its words. */
export function shown(of: Quantity, system: System) {
  const unit = shownUnit(of, system)
  return { unit, of: (si: number): number => inUnit(si, of, unit), say: (si: number, figures = 3): string => write(si, of, unit, figures), head: (name: string = of.name): string => (unit === '1' ? name : `${name}, ${unit}`) }
}
