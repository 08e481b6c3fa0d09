import { decimal } from './number.ts'

/**
 * A sum with every numeral written plainly: thousands joined, commas turned into points, mixed fractions bracketed. Where a comma has two
 * readings, the numeral and both of them.
 */
export function plainNumbers(text: string): string | { readonly numeral: string; readonly ambiguous: readonly [string, string] } {
  let doubtful: { numeral: string; ambiguous: readonly [string, string] } | null = null
  const plain = text
    .replace(/(?<![\d.,])\d{1,3}(?: \d{3})+(?!\d)/g, (numeral) => numeral.replace(/ /g, ''))
    .replace(/(?<![\d.,])(\d+) (\d+) ?\/ ?(\d+)(?![\d.,])/g, '($1+$2/$3)')
    .replace(/\d[\d.,]*/g, (numeral) => {
      const read = decimal(numeral)
      if (typeof read === 'object' && read !== null) doubtful = { numeral, ambiguous: read }
      return typeof read === 'string' ? read : numeral
    })
  return doubtful ?? plain
}
