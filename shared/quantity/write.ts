import { kinds } from './kinds.ts'
import { type Quantity } from './quantity.ts'
import { unitOf, unitsNamed } from './units.ts'

export type System = 'metric' | 'imperial'

/** The unit in which a reader of this system sees the quantity. */
export const shownUnit = (of: Quantity, system: System = 'metric'): string =>
  system === 'metric' ? of.show?.[0] ?? kinds[of.kind].metric : of.show?.[1] ?? kinds[of.kind].imperial

/** The number alone, in that unit. */
export function inUnit(si: number, of: Quantity, unit: string): number {
  const u = unitsNamed(unit).find((x) => x.kinds.includes(of.kind)) ?? unitOf(of.kind, unit)
  return (si - u.offset) / u.factor
}

/** A number with as many significant figures as a reader can use, a real minus, and thin spaces between thousands. */
export function writeNumber(value: number, figures = 3): string {
  if (!Number.isFinite(value)) return '–'
  if (value === 0) return '0'
  const size = Math.floor(Math.log10(Math.abs(Number(value.toPrecision(figures)))))
  if (size >= 7 || size < -4) {
    const [mantissa, power] = value.toExponential(figures - 1).split('e') as [string, string]
    return `${minus(mantissa.replace(/\.?0+$/, ''))} × 10${superscript(Number(power))}`
  }
  const decimals = Math.max(0, figures - 1 - size)
  // Whole figures are kept to four: a shaft speed reads 7650, not 7660; what lies beyond them is noise.
  const text = size >= figures ? Number(value.toPrecision(Math.max(figures, 4))).toFixed(0) : value.toFixed(decimals)
  const [whole, part] = text.split('.') as [string, string | undefined]
  const spaced = whole.replace('-', '').length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u2009') : whole
  return minus(part === undefined ? spaced : `${spaced}.${part}`)
}

/** Number and unit, as the reader of that unit expects: `350 kPa`, `7\u2009600 rpm`, `12 %`. */
export function write(si: number, of: Quantity, unit: string = shownUnit(of), figures = 3): string {
  const value = inUnit(si, of, unit)
  const number = of.whole ? minus(String(Math.round(value))) : writeNumber(value, figures)
  return unit === '1' ? number : unit === '°' ? `${number}°` : `${number}\u202f${unit}`
}

const minus = (text: string): string => text.replace('-', '−')
const superscript = (n: number): string => minus(String(n)).replace('−', '⁻').replace(/\d/g, (d) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(d)]!)
