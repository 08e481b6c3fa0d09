import { airGasConstant } from '../formula/constants.ts'
import { type Kind } from '../quantity/kinds.ts'
import { readNumber, tidy } from '../quantity/number.ts'
import { type CompressorMap, type SpeedLine } from '../quantity/quantity.ts'
import { fits, unitsNamed, type Unit } from '../quantity/units.ts'

/** Reference conditions, where a file does not state them and its reader was asked. */
export type Reference = { readonly temperature?: number | undefined; readonly pressure?: number | undefined }
/** A table read as it stands: whether it makes a map is for `mapFaults` to say. */
export type MapRead =
  | { readonly ok: true; readonly map: CompressorMap; /** What was done to it: rows put in order, a flow turned from volume to mass. */ readonly told: readonly string[] }
  | { readonly ok: false; readonly says: string; /** What must be asked before it can be read. */ readonly asks?: readonly ('temperature' | 'pressure')[] }

const longest = 400_000
const most = 2000

const columns = [
  { id: 'speed', named: /speed|rpm/i, kinds: ['shaftSpeed'], say: 'corrected speed, in rpm' },
  { id: 'flow', named: /flow/i, kinds: ['massFlow', 'volumeFlow'], say: 'corrected flow, in kg/s, g/s, lb/min or m³/s' },
  { id: 'ratio', named: /ratio/i, kinds: [], say: 'pressure ratio' },
  { id: 'efficiency', named: /eff/i, kinds: ['share'], say: 'efficiency, in % or as a share' },
] as const satisfies readonly { id: string; named: RegExp; kinds: readonly Kind[]; say: string }[]
type Column = (typeof columns)[number]['id']

/**
 * Reads a compressor map from a table, as a file or as pasted from a spreadsheet:
 *
 *   map; Name of the map
 *   reference temperature; 25 °C
 *   reference pressure; 100 kPa
 *   speed rpm; flow kg/s; pressure ratio; efficiency %
 *   52000; 0.034; 1.21; 61
 *
 * One point a row, in any order of columns. Cells stand between tabs, semicolons or commas; a decimal comma is read where
 * commas do not part the cells. Units stand in the head, behind the name or in a row beneath it. Reference temperature and
 * pressure are asked where they are not stated, and never assumed.
 */
export function readMapFile(text: string, asked: Reference = {}, named = 'Map from a table'): MapRead {
  if (text.length > longest) return no(`This is ${text.length} characters long; a map has up to ${longest}.`)
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n?|\n/).map((line, i) => ({ line: line.trim(), at: i + 1 })).filter(({ line }) => line !== '')
  if (lines.length === 0) return no('There is nothing here yet.')
  const by = ['\t', ';', ','].find((mark) => lines.some(({ line }) => line.includes(mark)))
  if (by === undefined) return no('No columns were found: part them by tabs, semicolons or commas.')
  const rows = lines.map(({ line, at }) => ({ at, cells: line.split(by).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1').trim()) }))

  // One cell that can only be a decimal comma settles what `1,234` means in all others.
  if (by !== ',' && rows.some(({ cells }) => cells.some((cell) => /^-?(0,\d+|\d+,(\d{1,2}|\d{4,}))$/.test(cell)))) {
    for (const row of rows) row.cells = row.cells.map((cell) => cell.replace(/^(-?\d+),(\d+)/, '$1.$2'))
  }

  const headAt = rows.findIndex(({ cells }) => columns.filter(({ named: of }) => cells.some((cell) => of.test(cell))).length >= 3)
  if (headAt < 0) return no(`No row of headings was found. The columns are ${list(columns.map(({ say }) => say))}.`)
  const stated = statements(rows.slice(0, headAt))
  if ('says' in stated) return no(stated.says)
  const below = rows[headAt + 1]
  const unitRow = below !== undefined && below.cells.every((cell) => number(cell) === null) ? below.cells : undefined

  const at: Partial<Record<Column, number>> = {}
  const unit: Partial<Record<Column, Unit>> = {}
  for (const { id, named: of, kinds: wanted, say } of columns) {
    const place = rows[headAt]!.cells.findIndex((cell) => of.test(cell))
    if (place < 0) return no(`The column for ${say} is missing.`)
    at[id] = place
    const written = [unitRow?.[place], unitOfHead(rows[headAt]!.cells[place]!)].filter((x) => x !== undefined && x !== '')
    unit[id] = written.flatMap((x) => unitsNamed(x!)).find((u) => wanted.some((kind) => fits(u, kind)))
    if (unit[id] === undefined && wanted.length > 0 && id !== 'efficiency') return no(`The heading “${rows[headAt]!.cells[place]!.slice(0, 40)}” does not say its unit. Write ${say}.`)
  }

  const points: Record<Column, number>[] = []
  for (const { cells, at: line } of rows.slice(headAt + (unitRow ? 2 : 1))) {
    const point = {} as Record<Column, number>
    for (const { id, say } of columns) {
      const cell = cells[at[id]!] ?? ''
      const value = number(cell)
      if (value === null) return no(`Line ${line}: “${cell.slice(0, 40)}” is no number for ${say}.`)
      if (typeof value === 'object') return no(`Line ${line}: “${cell.slice(0, 40)}” can mean ${value.ambiguous.join(' or ')}. Write it without the comma.`)
      point[id] = value
    }
    points.push(point)
    if (points.length > most) return no(`There are more than ${most} points; a map has far fewer.`)
  }
  if (points.length === 0) return no('There are headings, but no points beneath them.')

  const temperature = stated.temperature ?? asked.temperature
  const pressure = stated.pressure ?? asked.pressure
  if (temperature === undefined || pressure === undefined) {
    const asks = [...(temperature === undefined ? ['temperature'] as const : []), ...(pressure === undefined ? ['pressure'] as const : [])]
    return { ok: false, asks, says: `The table does not state its reference ${asks.join(' and ')}: read it off the map, or ask whoever drew it. Flow and speed are corrected to it, so it is never assumed.` }
  }

  const told: string[] = []
  const share = unit.efficiency?.factor ?? (points.every((p) => p.efficiency <= 1) ? 1 : 0.01)
  const volume = fits(unit.flow!, 'volumeFlow')
  const density = volume ? pressure / (airGasConstant.value * temperature) : 1
  if (volume) told.push('The flow is by volume: it was turned into mass with the density of dry air at the reference conditions.')
  const inLines = linesOf(points.map((p) => ({ speed: p.speed * unit.speed!.factor, flow: p.flow * unit.flow!.factor * density, ratio: p.ratio, efficiency: p.efficiency * share })), told)
  return { ok: true, told, map: { name: (stated.name ?? named).slice(0, 120), referenceTemperature: temperature, referencePressure: pressure, lines: inLines } }
}

/** A map as a table that `readMapFile` reads back, in SI but for rpm and %. */
export function mapFile(map: CompressorMap): string {
  const digits = (n: number): string => String(Number(n.toPrecision(7)))
  return [
    `map; ${map.name.replaceAll(/[;\r\n\t"]/g, ' ')}`,
    `reference temperature; ${digits(map.referenceTemperature)} K`,
    `reference pressure; ${digits(map.referencePressure / 1000)} kPa`,
    'speed rpm; flow kg/s; pressure ratio; efficiency %',
    ...map.lines.flatMap((line) => line.flow.map((flow, i) => [(line.speed * 30) / Math.PI, flow, line.ratio[i]!, line.efficiency[i]! * 100].map(digits).join('; '))),
  ].join('\n')
}

type Point = { readonly speed: number; readonly flow: number; readonly ratio: number; readonly efficiency: number }

/** Points into speed lines, in order of speed and, along each, of flow. */
function linesOf(points: readonly Point[], told: string[]): SpeedLine[] {
  const bySpeed = new Map<number, Point[]>()
  for (const p of points) bySpeed.set(p.speed, [...(bySpeed.get(p.speed) ?? []), p])
  const inOrder = [...bySpeed.values()].every((line, i, all) => (i === 0 || line[0]!.speed > all[i - 1]![0]!.speed) && line.every((p, j) => j === 0 || p.flow >= line[j - 1]!.flow))
  if (!inOrder) told.push('The points were put in order of speed and, along each line, of flow.')
  return [...bySpeed.values()].sort((a, b) => a[0]!.speed - b[0]!.speed).map((line) => {
    const along = [...line].sort((a, b) => a.flow - b.flow)
    return { speed: along[0]!.speed, flow: along.map((p) => p.flow), ratio: along.map((p) => p.ratio), efficiency: along.map((p) => p.efficiency) }
  })
}

type Stated = { name?: string; temperature?: number; pressure?: number }
/** What the rows above the head say of the map. Other rows there are remarks, and are left alone. */
function statements(rows: readonly { readonly cells: readonly string[] }[]): Stated | { readonly says: string } {
  const found: Stated = {}
  for (const { cells: [label = '', ...more] } of rows) {
    const value = more.find((cell) => cell !== '') ?? ''
    if (/^(map|name)$/i.test(label) && value !== '') found.name = value
    for (const [key, of, kind] of [['temperature', /reference temperature/i, 'temperature'], ['pressure', /reference pressure/i, 'pressure']] as const) {
      if (!of.test(label)) continue
      const read = readNumber(tidy(value))
      const spelt = read && 'rest' in read ? (read.rest.trim() || unitOfHead(label)) : ''
      const unit = unitsNamed(spelt).find((u) => fits(u, kind))
      if (!read || !('value' in read) || !unit) return { says: `The reference ${key} reads “${value.slice(0, 40)}”. Write it with its unit, such as ${key === 'temperature' ? '25 °C' : '100 kPa'}.` }
      found[key] = read.value * unit.factor + unit.offset
    }
  }
  return found
}

/** The unit in a heading: in brackets, or what follows the last word of the name. */
function unitOfHead(head: string): string {
  const bracket = /[([]([^)\]]+)[)\]]/.exec(head)
  return (bracket?.[1] ?? head.replace(/^.*(speed|flow|efficiency|temperature|pressure)\b[\s,:]*/i, '')).trim()
}
function number(cell: string): number | { readonly ambiguous: readonly [string, string] } | null {
  const read = readNumber(tidy(cell))
  if (read === null) return null
  if ('ambiguous' in read) return read
  return /^%?$/.test(read.rest.trim()) ? read.value : null
}
const list = (words: readonly string[]): string => `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`
const no = (says: string): MapRead => ({ ok: false, says })
