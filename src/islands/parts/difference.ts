import type { Quantity } from '@trochoid/compute/quantity/quantity.ts'
import { inUnit, shownUnit, type System } from '@trochoid/compute/quantity/write.ts'

/** A change of a quantity in the reader's units: the zero of a temperature scale does not count. */
export function differenceIn(si: number, of: Quantity, system: System): number {
  const unit = shownUnit(of, system)
  return inUnit(si, of, unit) - inUnit(0, of, unit)
}
/** The unit of a change, as it is written after the number; nothing for a plain number. */
export function writeDifference(of: Quantity, system: System): string {
  const unit = shownUnit(of, system)
  return unit === '1' ? '' : unit === '°C' ? 'K' : unit.replace(/ (abs|gauge)$/, '')
}
