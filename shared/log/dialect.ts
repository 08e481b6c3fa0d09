/** How a log file is written: found from its beginning. */
export type Dialect = {
  readonly separator: ',' | ';' | '\t' | '|'
  /** A comma between whole and fraction. */
  readonly decimalComma: boolean
  /** Names of the columns, and the units told in a row of their own; empty where there is none. */
  readonly names: readonly string[]
  readonly units: readonly string[]
  /** Lines before the first row of numbers. */
  readonly skip: number
}
export type Found = { readonly ok: true; readonly dialect: Dialect } | { readonly ok: false; readonly says: string }

const separators = [';', '\t', '|', ','] as const
/** Lines looked at. */
const enough = 60

/** Finds separator, decimal comma, names and units in the first lines of a log. */
export function dialectOf(text: string): Found {
  if (text.includes('\u0000')) return { ok: false, says: 'This is not text: a log is a CSV file. Export it as CSV, UTF-8.' }
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/).slice(0, enough)
  const separator = [...separators].map((s) => ({ s, ...evenness(lines, s) })).filter((c) => c.columns > 1).sort((a, b) => b.rows - a.rows || b.columns - a.columns)[0]
  if (!separator) return { ok: false, says: 'No separator divides these lines into columns: comma, semicolon, tab and | are known. A log needs a row of names and at least two columns.' }
  const { s, columns } = separator
  const rows = lines.map((line) => cellsOf(line, s))
  const decimalComma = s !== ',' && rows.some((cells) => cells.length === columns && cells.some((c) => /^\s*-?\d+,\d+\s*$/.test(c)))
  const numbers = (cells: readonly string[]): number => cells.filter((c) => isNumber(c, decimalComma)).length
  const filled = (cells: readonly string[]): number => cells.filter((c) => c.trim() !== '').length
  const first = rows.findIndex((cells) => cells.length === columns && numbers(cells) > 0 && numbers(cells) * 2 >= filled(cells))
  if (first < 0) return { ok: false, says: 'There is no row of numbers in the first lines of this file.' }
  const above = rows.slice(0, first).map((cells, i) => ({ cells, i })).filter(({ cells }) => cells.length === columns && filled(cells) > 1)
  const head = above.find(({ cells }, k) => !looksLikeUnits(cells) || k === above.length - 1)
  if (!head) return { ok: false, says: 'The columns have no names: a log needs a row of names above its numbers.' }
  const unitRow = above.find(({ cells, i }) => i > head.i && looksLikeUnits(cells))
  return { ok: true, dialect: { separator: s, decimalComma, names: head.cells.map((c) => c.trim().slice(0, 80)), units: unitRow ? unitRow.cells.map((c) => c.trim().replace(/^[[(]|[\])]$/g, '').slice(0, 20)) : [], skip: first } }
}

/** How many lines a separator cuts into the same number of columns. */
function evenness(lines: readonly string[], separator: string): { columns: number; rows: number } {
  const counts = new Map<number, number>()
  for (const line of lines) { const n = cellsOf(line, separator).length; if (n > 1) counts.set(n, (counts.get(n) ?? 0) + 1) }
  const [columns = 0, rows = 0] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? []
  return { columns, rows }
}

/** The cells of one line; a quoted cell may hold the separator. */
export function cellsOf(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator)
  const cells: string[] = []
  let cell = '', quoted = false
  for (let i = 0; i < line.length; i++) {
    const c = line[i]!
    if (c === '"') { if (quoted && line[i + 1] === '"') { cell += '"'; i++ } else quoted = !quoted }
    else if (c === separator && !quoted) { cells.push(cell); cell = '' }
    else cell += c
  }
  return [...cells, cell]
}

const isNumber = (cell: string, comma: boolean): boolean => (comma ? /^\s*[-+]?(\d+:)*\d*(,\d*)?(e[-+]?\d+)?\s*$/i : /^\s*[-+]?(\d+:)*\d*(\.\d*)?(e[-+]?\d+)?\s*$/i).test(cell) && /\d/.test(cell)
/** Units are short, and most are in brackets or known by sight. */
const looksLikeUnits = (cells: readonly string[]): boolean => {
  const told = cells.map((c) => c.trim()).filter((c) => c !== '')
  return told.length > 0 && told.filter((c) => /^[[(].{0,12}[\])]$|^(s|ms|min|h|rpm|1\/min|%|°?[cfk]|deg ?[cf]?|kpa|bar|psi|mbar|hpa|v|a|kg\/h|g\/s|l\/h|km\/h|mph|m\/s|nm|-|–|1|λ|kpa abs|bar abs|bar gauge|psi gauge)$/i.test(c)).length * 2 > told.length
}
