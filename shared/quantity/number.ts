/** What a text begins with, as a number: decimals with point or comma, powers of ten, fractions, mixed fractions. */
export type NumberRead = { readonly value: number; readonly rest: string } | { readonly ambiguous: readonly [string, string] } | null

const glyphs: Readonly<Record<string, string>> = { '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8', '⅓': '1/3', '⅔': '2/3' }

const superscripts: Readonly<Record<string, string>> = { '⁻': '-', '⁺': '', ...Object.fromEntries([...'⁰¹²³⁴⁵⁶⁷⁸⁹'].map((c, i) => [c, String(i)])) }

/** Makes the many spaces, minus signs and fraction glyphs of typed text one of each. */
export const tidy = (text: string): string => text
  .replace(/[    ]/g, ' ')
  .replace(/[−–﹣－]/g, '-')
  .replace(/[×✕]/g, '*').replace(/÷/g, '/')
  // "2 x 650" as it is said, and "5 × 10⁻³" as it is printed.
  .replace(/(\d)( ?)[xX] ?(?=\d)/g, (all, before: string, space: string) => (before === '0' && space === '' ? all : `${before}*`))
  .replace(/ ?\* ?10([⁺⁻]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, power: string) => `e${[...power].map((c) => superscripts[c]).join('')}`)
  .replace(/(\d?)\s*([½¼¾⅛⅜⅝⅞⅓⅔])/g, (_, whole: string, glyph: string) => (whole ? `${whole} ` : '') + glyphs[glyph])
  .replace(/\s+/g, ' ').trim()

const digits = /^([+-]?)((?:\d{1,3}(?: \d{3})+(?!\d)(?:[.,]\d+)?)|(?:\d[\d.,]*|[.,]\d+))(?:e([+-]?\d{1,4})(?![\w.]))?/i

export function readNumber(text: string): NumberRead {
  const match = digits.exec(text)
  if (!match) return null
  const mantissa = decimal(match[2]!.replace(/ /g, ''))
  if (mantissa === null) return null
  if (typeof mantissa === 'object') return { ambiguous: mantissa }
  const sign = match[1] === '-' ? -1 : 1
  const value = Number(`${mantissa}e${match[3] ?? 0}`)
  const rest = text.slice(match[0].length)
  const over = /^ ?\/ ?(\d+)(?![\d.,])/.exec(rest)
  const mixed = /^ (\d+) ?\/ ?(\d+)(?![\d.,])/.exec(rest)
  if (mixed && Number.isInteger(value)) return { value: sign * (value + Number(mixed[1]) / Number(mixed[2])), rest: rest.slice(mixed[0].length) }
  if (over) return { value: (sign * value) / Number(over[1]), rest: rest.slice(over[0].length) }
  return { value: sign * value, rest }
}

/** A decimal numeral as a plain one with a point; two readings where a comma may group thousands or mark the decimals. */
export function decimal(text: string): string | readonly [string, string] | null {
  const commas = text.split(',').length - 1
  const points = text.split('.').length - 1
  if (commas === 0) return points <= 1 ? text : grouped(text, '.')
  if (points === 0) {
    if (commas > 1) return grouped(text, ',')
    return /^[1-9]\d{0,2},\d{3}$/.test(text) ? [text.replace(',', '.'), text.replace(',', '')] : text.replace(',', '.')
  }
  if (points === 1 && text.lastIndexOf('.') > text.lastIndexOf(',')) return grouped(text.split('.')[0]!, ',', text.split('.')[1])
  if (commas === 1 && text.lastIndexOf(',') > text.lastIndexOf('.')) return grouped(text.split(',')[0]!, '.', text.split(',')[1])
  return null
}

function grouped(text: string, by: ',' | '.', decimals?: string): string | null {
  const parts = text.split(by)
  const right = parts.every((part, i) => (i === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(part))
  return right ? parts.join('') + (decimals === undefined ? '' : `.${decimals}`) : null
}
