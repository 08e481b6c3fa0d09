import { type Field } from '../build/field.ts'
import { differenceOf } from '../build/margins.ts'
import { doubt } from '../build/measureNext.ts'
import { fromAt, valueAt, type Entry, type From, type Sheet } from '../build/sheet.ts'
import { isQuantity, type CompressorMap, type Points, type Quantity } from '../quantity/quantity.ts'
import { exact } from './exact.ts'
import { type Form, type Spread } from './spread.ts'

/** What the reader said of a tolerance, by id of the input. */
export type Tolerances = Readonly<Record<string, Spread>>

/** One number of the sheet that may be out, and by how much. A curve is out as a whole; of a compressor map, its flows and its efficiencies. */
export type Input = {
  /** The field’s path; for a map with what of it: `boost.compressorMap#flow`. */
  readonly id: string
  readonly path: string
  readonly field: Field
  readonly name: string
  readonly from: From
  /** Half width and form that stand unless the reader says otherwise. */
  readonly usual: Spread
  readonly spread: Spread
  /** The quantity that a tolerance is: of a temperature a difference. */
  readonly of: Quantity
}

/** Form of a spread by where the number came from: only limits are known of a maker’s figure and a guess; common practice lies nearer its middle. */
export const forms: Readonly<Record<From, Form>> = { measured: 'normal', maker: 'rectangular', common: 'triangular', guess: 'rectangular' }

const flowShare: Quantity = { id: 'flow-share', name: 'Flows of the compressor map', symbol: '', kind: 'share', range: [0, 1], step: 0.01 }
const efficiencyShare: Quantity = { ...flowShare, id: 'efficiency-share', name: 'Efficiencies of the compressor map' }

/** Every number of the sheet that can have a tolerance, in the order of the sheet. One without a tolerance has a half width of nothing. */
export function inputsOf(sheet: Sheet, fields: ReadonlyMap<string, Field>, said: Tolerances = {}): readonly Input[] {
  return [...fields.values()].flatMap((field) => {
    const value = valueAt(sheet, field)
    const { path, shape } = field
    if (value === null || value === undefined || (isQuantity(shape) ? shape.whole : shape.kind === 'choice' || shape.kind === 'grade')) return []
    const from = fromAt(sheet, field)
    const input = (id: string, name: string, of: Quantity, step: number, most = Infinity): Input => {
      const usual: Spread = { form: forms[from], half: exact.has(path) ? 0 : Math.min(step * doubt[from], most) }
      return { id, path, field, name, from, usual, spread: said[id] ?? usual, of }
    }
    const label = field.label ?? shape.name
    if (isQuantity(shape)) return [input(path, label, differenceOf(shape), shape.step, mostOf(shape, value as number))]
    if (shape.kind === 'curve') return [input(path, `${label}, as a whole`, differenceOf(shape.y), shape.y.step)]
    return [input(`${path}#flow`, flowShare.name, flowShare, flowShare.step), input(`${path}#efficiency`, efficiencyShare.name, efficiencyShare, efficiencyShare.step)]
  })
}

/** A number that cannot be less than nothing is seldom out by more than half of itself: common practice, no source. */
const mostOf = ({ kind, range }: Quantity, value: number): number => (range[0] >= 0 && kind !== 'temperature' ? Math.abs(value) / 2 : Infinity)

/** The sheet with every input out by so much. Nothing is moved beyond what its quantity can sensibly be. */
export function moved(sheet: Sheet, inputs: readonly Input[], by: ArrayLike<number>): Sheet {
  const entries: Record<string, Entry> = { ...sheet.entries }
  inputs.forEach((input, i) => {
    if (by[i] === 0) return
    const { path, field } = input
    const value: unknown = entries[path] === undefined ? field.start : entries[path].value
    entries[path] = { ...entries[path], value: shifted(input, value, by[i]!) }
  })
  return { ...sheet, entries }
}

function shifted({ id, field: { shape } }: Input, value: unknown, by: number): unknown {
  if (isQuantity(shape)) return within(shape.range, value as number, by)
  if (shape.kind === 'curve') { const { x, y } = value as Points; return { x, y: y.map((one) => within(shape.y.range, one, by)) } satisfies Points }
  const map = value as CompressorMap
  const lines = map.lines.map((line) => (id.endsWith('#flow')
    ? { ...line, flow: line.flow.map((flow) => flow * Math.max(0.1, 1 + by)) }
    : { ...line, efficiency: line.efficiency.map((one) => within([0.1, 0.9], one, by)) }))
  return { ...map, lines } satisfies CompressorMap
}

/** A value that already lies outside its range stays free to move on that side, as far as it stands. */
const within = ([low, high]: readonly [number, number], value: number, by: number): number => Math.min(Math.max(value + by, Math.min(low, value)), Math.max(high, value))
