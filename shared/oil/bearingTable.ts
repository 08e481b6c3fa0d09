import { type BearingTable } from '../data/oilsBearings.ts'
import { hermiteAt, monotoneSlopes } from '../numerics/monotone.ts'

/** One bearing shape, ready to be read: columns over log10 of the Sommerfeld number with their monotone slopes. */
export type ReadyTable = { readonly least: number; readonly most: number; readonly log: Float64Array; readonly columns: readonly Column[] }
type Column = { readonly y: Float64Array; readonly slope: Float64Array; readonly atZero: number; readonly centred: number }
export const filmColumn = 0, attitudeColumn = 1, frictionColumn = 2, flowColumn = 3, sideColumn = 4, pressureColumn = 5

/** Twice pi squared: friction variable over Sommerfeld number of a journal that runs centred. */
const petroff = 2 * Math.PI ** 2

/** Prepares a printed table once, so that reading it costs a few multiplications. */
export function ready({ rows, attitudeWhenCentred }: BearingTable): ReadyTable {
  const log = Float64Array.from(rows, (r) => Math.log10(r[1]))
  const last = rows.length - 1
  // Where the table ends: touching (S = 0) and centred (S without limit).
  const column = (of: (r: BearingTable['rows'][number]) => number, atZero: number, centred: number): Column => {
    const y = Float64Array.from(rows, of)
    return { y, slope: monotoneSlopes(log, y), atZero, centred }
  }
  return {
    least: rows[0]![1], most: rows[last]![1], log,
    columns: [
      column((r) => 1 - r[0], 0, 1), column((r) => r[2], 0, attitudeWhenCentred), column((r) => r[3], 0, 0),
      column((r) => r[4], rows[0]![4], Math.PI), column((r) => r[5], rows[0]![5] === 0 ? 0 : 1, 0), column((r) => r[6], 0, rows[last]![6]),
    ],
  }
}

/**
 * Reads a column at a Sommerfeld number. Inside the table a monotone cubic in log10 S; below it straight in S to the touching journal;
 * above it the departure from the centred journal shrinks as 1/S, and friction tends to Petroff's.
 * @param log log10 of the Sommerfeld number, taken once for all columns
 */
export function readColumn(table: ReadyTable, index: number, sommerfeld: number, log: number): number {
  const c = table.columns[index]!
  if (sommerfeld < table.least) return c.atZero + (c.y[0]! - c.atZero) * (sommerfeld / table.least)
  if (sommerfeld <= table.most) return hermiteAt(table.log, c.y, c.slope, log)
  const shrink = table.most / sommerfeld
  const end = c.y[c.y.length - 1]!
  if (index === frictionColumn) return petroff * sommerfeld + (end - petroff * table.most) * shrink
  return c.centred + (end - c.centred) * shrink
}
