import { readValue, type ReadValue } from '@trochoid/compute/calculation/inputs.ts'
import { readNumber, tidy } from '@trochoid/compute/quantity/number.ts'
import type { CompressorMap, Curve, MapShape, Points, Quantity, SpeedLine } from '@trochoid/compute/quantity/quantity.ts'
import { unitOf } from '@trochoid/compute/quantity/units.ts'
import { shownUnit, type System } from '@trochoid/compute/quantity/write.ts'
import { headOf } from './rowText.ts'

type Result = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly says: string }
const longest = 40_000
const rpm = Math.PI / 30

/** Reads a curve or a map from rows of numbers, and weighs it as anything from outside is weighed. */
export function readRows(text: string, shape: Curve | MapShape, system: System): ReadValue {
  const read = shape.kind === 'curve' ? readCurveText(text, shape, system) : readMapText(text)
  return read.ok ? readValue(read.value, shape) : read
}

/** Numbers of each line, or the first line that is none. */
function lines(text: string): { ok: true; rows: number[][] } | { ok: false; says: string } {
  if (text.length > longest) return { ok: false, says: `This is ${text.length} characters long; a table here has up to ${longest}.` }
  const rows: number[][] = []
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue
    const cells = line.trim().split(/\s*[;\t]\s*|\s+/).map((cell) => readNumber(tidy(cell)))
    const numbers = cells.map((c) => (c && 'value' in c && c.rest === '' ? c.value : NaN))
    if (numbers.some((n) => !Number.isFinite(n))) return { ok: false, says: `Line ${i + 1}, “${line.trim().slice(0, 40)}”, is not numbers alone.` }
    rows.push(numbers)
  }
  return { ok: true, rows }
}

function readCurveText(text: string, shape: Curve, system: System): Result {
  const read = lines(text)
  if (!read.ok) return read
  const wrong = read.rows.findIndex((row) => row.length !== 2)
  if (wrong >= 0) return { ok: false, says: `Line ${wrong + 1} has ${read.rows[wrong]!.length} numbers; each line has two: ${headOf(shape, system)}.` }
  const si = (of: Quantity, n: number): number => { const u = unitOf(of.kind, shownUnit(of, system)); return n * u.factor + u.offset }
  return { ok: true, value: { x: read.rows.map(([x]) => si(shape.x, x!)), y: read.rows.map(([, y]) => si(shape.y, y!)) } satisfies Points }
}

function readMapText(text: string): Result {
  const read = lines(text)
  if (!read.ok) return read
  const [temperature, pressure, ...points] = read.rows
  if (temperature?.length !== 1 || pressure?.length !== 1) return { ok: false, says: 'The first line is the map’s reference temperature in °C, the second its reference pressure in kPa: they are never assumed.' }
  const wrong = points.findIndex((row) => row.length !== 4)
  if (wrong >= 0) return { ok: false, says: `Point ${wrong + 1} has ${points[wrong]!.length} numbers; each has four: speed, flow, pressure ratio, efficiency.` }
  const bySpeed = new Map<number, { flow: number[]; ratio: number[]; efficiency: number[] }>()
  for (const [speed, flow, ratio, efficiency] of points as [number, number, number, number][]) {
    const line = bySpeed.get(speed) ?? { flow: [], ratio: [], efficiency: [] }
    line.flow.push(flow / 1000); line.ratio.push(ratio); line.efficiency.push(efficiency / 100)
    bySpeed.set(speed, line)
  }
  const list: SpeedLine[] = [...bySpeed].map(([speed, line]) => ({ speed: speed * rpm, ...line }))
  return { ok: true, value: { name: 'Entered map', referenceTemperature: temperature[0]! + 273.15, referencePressure: pressure[0]! * 1000, lines: list } satisfies CompressorMap }
}
