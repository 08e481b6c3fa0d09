import { type Kind } from '../quantity/kinds.ts'
import { unitsOf, type Unit } from '../quantity/units.ts'
import { damaged } from './fault.ts'
import { type Reader, type Writer } from './bytes.ts'

/**
 * Units in which a link may write a number, by their place in this list: 650 cc/min is two bytes, the same in m³/s eight. Links
 * that were sent out keep meaning what they meant: units are added at the end, and none is ever moved or taken away.
 */
export const linkUnits: readonly string[] = [
  '1', '%', '°', 'mm', 'µm', 'm', 'km', 'in', 'cm²', 'mm²', 'cm³', 'L', 'kg', 'g', 'mg', 'ms', 'µs', 's', 'min', 'h', 'm/s', 'km/h', 'rpm', 'rad/s', 'Hz', '°C', 'K', '°F',
  'kPa abs', 'bar abs', 'kPa gauge', 'bar gauge', 'psi gauge', 'kPa', 'bar', 'psi', 'MPa', 'GPa', 'N', 'N m', 'kJ', 'J', 'kW', 'W', 'g/s', 'kg/s', 'L/h', 'L/min', 'cm³/min', 'm³/s', 'kg/m³', 'mPa s', 'mm²/s',
  'J/(kg K)', 'kJ/(kg K)', 'kJ/kg', 'MJ/kg', 'W/K', 'kW/K', 'W/(m K)', 'W/(m² K)', 'kJ/K', '1e-6/K', 'kg m²', 'g m²', 'kg cm²', 'g mm', 'N/mm', 'V', 'A', 'Ω', 'mΩ', 'mH', 'g/kWh', '1/m⁴', 'L/100 km', 'cm³/rev', 'mg/rev', 'g/mol',
]
const plainDoubles = 255
const mostDigits = 12
/** Written shorter where twelve figures say the same; else as the eight bytes it is. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.abs(b)

/** Numbers of one kind, as whole numbers of one decimal place of one unit, each as its step from the one before. */
export function writeNumbers(to: Writer, values: readonly number[], kind: Kind): void {
  let best: { readonly unit: number; readonly power: number; readonly wholes: readonly number[]; readonly cost: number } | null = null
  for (const unit of unitsOf(kind)) {
    const place = linkUnits.indexOf(unit.name)
    const found = place < 0 ? null : wholesIn(values, unit)
    if (found && (best === null || found.cost < best.cost)) best = { unit: place, ...found }
  }
  if (best === null || best.cost >= 8 * values.length) {
    to.byte(plainDoubles)
    for (const value of values) to.double(value)
    return
  }
  to.byte(best.unit)
  to.signed(best.power)
  let before = 0
  for (const n of best.wholes) { to.signed(n - before); before = n }
}

export function readNumbers(from: Reader, count: number, kind: Kind): number[] {
  const place = from.byte()
  if (place === plainDoubles) return Array.from({ length: count }, () => from.double())
  const unit = unitsOf(kind).find((u) => u.name === linkUnits[place])
  const power = from.signed()
  if (!unit || Math.abs(power) > mostDigits + 6) throw damaged()
  let whole = 0
  return Array.from({ length: count }, () => inSi((whole += from.signed()), power, unit))
}

// Dividing by a power of ten rounds once, as reading the decimal does: what was typed comes back to the last bit.
const inSi = (whole: number, power: number, unit: Unit): number => (power < 0 ? whole / 10 ** -power : whole * 10 ** power) * unit.factor + unit.offset

/** The fewest decimals of a unit in which all the numbers are whole. */
function wholesIn(values: readonly number[], unit: Unit): { readonly power: number; readonly wholes: readonly number[]; readonly cost: number } | null {
  const inUnit = values.map((si) => (si - unit.offset) / unit.factor)
  for (let power = 6; power >= -mostDigits; power--) {
    const wholes = inUnit.map((x) => Math.round(power < 0 ? x * 10 ** -power : x / 10 ** power))
    if (wholes.some((n) => !(Math.abs(n) < 10 ** mostDigits))) return null
    if (!wholes.every((n, i) => same(inSi(n, power, unit), values[i]!))) continue
    return { power, wholes, cost: wholes.reduce((sum, n, i) => sum + bytesOf(n - (wholes[i - 1] ?? 0)), 2) }
  }
  return null
}
const bytesOf = (step: number): number => Math.max(1, Math.ceil(Math.log2(2 * Math.abs(step) + 1) / 7))
