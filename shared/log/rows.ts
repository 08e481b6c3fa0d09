import { type Dialect } from './dialect.ts'

/** A log as numbers: one array a column, rows that could not be read left out and counted. */
export type Rows = { readonly count: number; readonly columns: readonly Float64Array[]; readonly bad: Bad; readonly cut: boolean }
export type Bad = { readonly count: number; /** The first few: line and why. */ readonly first: readonly { readonly line: number; readonly says: string }[] }

/** More rows than this are not kept: half an hour at a thousand rows a second. */
export const mostRows = 2_000_000
const told = 5
const newline = 10, carriage = 13, quote = 34, minus = 45, plus = 43, dot = 46, comma = 44, colon = 58, space = 32, tab = 9

/**
 * Reads rows of numbers from pieces of a file as they come. Bytes are turned into numbers at once, without a text for each cell: a library
 * made for any CSV takes several times as long over a log of fifty megabytes.
 */
export function rowsReader({ separator, decimalComma, names, skip }: Dialect) {
  const cut = separator.charCodeAt(0), point = decimalComma ? comma : dot
  const width = names.length
  let columns = names.map(() => new Float64Array(4096))
  const row = new Float64Array(width)
  let count = 0, line = 0, badCount = 0, full = false
  const first: { line: number; says: string }[] = []
  let rest: Uint8Array = new Uint8Array(0)
  /** Columns that never held a number: text is no fault there. */
  const numeric = new Uint8Array(width)

  const bad = (says: string): void => { badCount++; if (first.length < told) first.push({ line, says }) }

  /** One line, from a byte to the byte after its last. */
  function read(b: Uint8Array, from: number, to: number): void {
    line++
    if (line <= skip) return
    if (to > from && b[to - 1] === carriage) to--
    if (to === from) return
    let cell = 0, text = -1
    let i = from
    for (;;) {
      // One cell.
      let value = 0, scale = 0, sign = 1, digits = 0, whole = 0, plain = true, quoted = false, exponent = 0
      for (; i < to; i++) {
        const c = b[i]!
        if (c === cut && !quoted) break
        if (c >= 48 && c <= 57) { value = value * 10 + (c - 48); digits++; if (scale > 0) scale *= 10 }
        else if (c === point && scale === 0) scale = 1
        else if (c === minus && digits === 0) sign = -1
        else if (c === space || c === tab || c === plus) continue
        else if (c === quote) quoted = !quoted
        else if (c === colon && digits > 0 && scale === 0) { whole = (whole + value) * 60; value = 0 }
        else if ((c === 101 || c === 69) && digits > 0) {
          let e = 0, down = false
          for (i++; i < to && b[i] !== cut; i++) { const d = b[i]!; if (d === minus) down = true; else if (d >= 48 && d <= 57) e = e * 10 + (d - 48); else if (d !== plus && d !== space && d !== quote) plain = false }
          exponent = down ? -e : e
          break
        } else plain = false
      }
      if (cell < width) {
        if (!plain) { if (text < 0 && numeric[cell] === 1) text = cell; row[cell] = NaN } else if (digits === 0) row[cell] = NaN
        else { numeric[cell] = 1; row[cell] = sign * (whole + (scale > 1 ? value / scale : value)) * (exponent === 0 ? 1 : 10 ** exponent) }
      }
      cell++
      if (i >= to) break
      i++
      if (i === to) { if (cell < width) row[cell] = NaN; cell++; break }
    }
    if (cell !== width && !(cell === width + 1 && b[to - 1] === cut)) return bad(`${cell} cells, not ${width}`)
    if (text >= 0) return bad(`“${names[text]}” holds no number`)
    if (count >= mostRows) { full = true; return }
    if (count === columns[0]!.length) columns = columns.map((c) => { const longer = new Float64Array(c.length * 2); longer.set(c); return longer })
    for (let k = 0; k < width; k++) columns[k]![count] = row[k]!
    count++
  }

  return {
    /** Takes the next piece of the file. */
    take(piece: Uint8Array): void {
      let b = piece
      if (rest.length > 0) { b = new Uint8Array(rest.length + piece.length); b.set(rest); b.set(piece, rest.length) }
      let from = 0
      for (;;) {
        const to = b.indexOf(newline, from)
        if (to < 0) break
        read(b, from, to)
        from = to + 1
      }
      rest = b.slice(from)
    },
    /** What has been read; call once, after the last piece. */
    done(): Rows {
      if (rest.length > 0) read(rest, 0, rest.length)
      return { count, columns: columns.map((c) => c.subarray(0, count)), bad: { count: badCount, first }, cut: full }
    },
  }
}
