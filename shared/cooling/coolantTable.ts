import { shares, temperatures } from '../data/ethyleneGlycol.ts'

/** A coolant table made ready for reading: no gaps, and in logarithms where the property runs over decades. */
export type CoolantTable = { readonly values: Float64Array; readonly logarithmic: boolean }

const columns = shares.length
const coldest = temperatures[0]!
const rowStep = temperatures[1]! - coldest
const columnStep = shares[1]!

/**
 * Where a column is frozen it is continued in a straight line from its two coldest values, so that a mixture between a frozen
 * column and a liquid one can be read down to its own freezing point.
 */
export function coolantTable(rows: readonly (readonly (number | null)[])[], unit: number, logarithmic = false): CoolantTable {
  const values = new Float64Array(rows.length * columns)
  for (let c = 0; c < columns; c++) for (let r = rows.length - 1; r >= 0; r--) {
    const given = rows[r]![c]
    const at = r * columns + c
    values[at] = given == null ? 2 * values[at + columns]! - values[at + 2 * columns]! : logarithmic ? Math.log(given * unit) : given * unit
  }
  return { values, logarithmic }
}

/** Straight lines over temperature and share, logarithms for a logarithmic table; beyond the ends the last line goes on. */
export function tableAt({ values, logarithmic }: CoolantTable, temperature: number, share: number): number {
  const x = (temperature - coldest) / rowStep
  const y = share / columnStep
  const r = Math.min(Math.max(Math.floor(x), 0), values.length / columns - 2)
  const c = Math.min(Math.max(Math.floor(y), 0), columns - 2)
  const u = x - r, v = y - c, i = r * columns + c
  const value = (1 - u) * ((1 - v) * values[i]! + v * values[i + 1]!) + u * ((1 - v) * values[i + columns]! + v * values[i + columns + 1]!)
  return logarithmic ? Math.exp(value) : value
}
