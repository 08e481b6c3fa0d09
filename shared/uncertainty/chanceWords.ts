import { differenceOf, quantityOf, type Weighed } from '../build/margins.ts'
import { shownUnit, write, writeNumber, type System } from '../quantity/write.ts'
import { type Chance, type Counted, type Part } from './chances.ts'

/** As many figures as the sampling error leaves, and never certainty: `57 %`, `over 99.8 %`. */
export function chanceWords({ share, low, high }: Counted): string {
  if (share === 1) return `over ${percent(Math.floor(low * 1000) / 1000)}`
  if (share === 0) return `under ${percent(Math.ceil(high * 1000) / 1000)}`
  // Where one sample in thousands fell out, rounding must not make it all of them.
  return percent(Math.min(0.999, Math.max(0.001, share)), high - low)
}
/** The interval in which the counted chance lies, 95 times in 100. */
export const errorWords = ({ share, low, high }: Counted): string => (share === 1 || share === 0 ? '' : `${percent(low, high - low).replace('\u202f%', '')} to ${percent(high, high - low)}`)

function percent(share: number, width = 0): string {
  const decimals = width > 0.015 ? 0 : 1
  return `${(share * 100).toFixed(decimals)}\u202f%`
}

/** A link in which more than this is left has no number worth reading. */
const plenty = 10

/** What is left between two ends, in the margin’s own measure: `−45 to 33 K`. */
export function leftInterval({ margin }: Pick<Weighed, 'margin'>, [low, high]: readonly [number, number], system: System = 'metric'): string {
  if (Number.isNaN(low)) return ''
  const one = (left: number): string => {
    if (left === -Infinity) return 'no solution'
    if (margin.as === 'share') return left > plenty ? `over ${writeNumber(plenty * 100)}\u202f%` : `${writeNumber(left * 100, 2)}\u202f%`
    const of = differenceOf(quantityOf(margin.capacity))
    return write(left, of, shownUnit(of, system), 2).replace('Δ°F', '°F')
  }
  const [from, to] = [one(low), one(high)]
  const unit = /\u202f\S+$/.exec(to)?.[0] ?? ''
  return `${unit && from.endsWith(unit) ? from.slice(0, -unit.length) : from} to ${to}`
}

/** What a margin owes most of its doubt to. */
export const partsWords = (parts: readonly Part[]): string => parts.map(({ name, share }) => `${lower(name)} (${Math.round(share * 100)}\u202f%)`).join(', ')
const lower = (text: string): string => (/^[A-Z][a-z ]/.test(text) ? text[0]!.toLowerCase() + text.slice(1) : text)

/** The first-order sum beside the sampled chance, and whether it may be trusted. */
export function firstOrderWords({ firstOrder }: Chance): string {
  if (firstOrder === null) return 'none: it jumps'
  const share = firstOrder.enough
  const said = share > 0.9995 ? 'over 99.9\u202f%' : share < 0.0005 ? 'under 0.1\u202f%' : percent(share, 0.02)
  return firstOrder.linear ? said : `${said}, not linear`
}
