import { isQuantity, type Quantity, type Shape } from '../quantity/quantity.ts'
import { shownUnit, write, writeNumber, type System } from '../quantity/write.ts'
import { type Field } from './field.ts'
import { type Margin, type State } from './margin.ts'
import { type Point, type Solved } from './point.ts'
import { type PointValue } from './pointValue.ts'
import { fromAt, valueAt, type From, type Sheet } from './sheet.ts'

/** Thresholds that a reader changed, by margin id. */
export type Thresholds = Readonly<Record<string, number>>

export type Weighed = {
  readonly id: string
  readonly margin: Margin
  readonly state: State
  readonly demand: number | null
  readonly capacity: number | null
  /** What is left: a share of what is asked, or a difference in SI; negative when short. */
  readonly left: number | null
  /** Low and high of what is left, where the model gives a band. */
  readonly band: readonly [number, number] | null
  /** Shaft speed at which it is worst. */
  readonly speed: number | null
  readonly tight: number
  /** Fields without which it cannot be known. */
  readonly missing: readonly string[]
  /** Why it has no solution, where that is so. */
  readonly failed: string | null
  /** Speeds of the sweep at which it could not be weighed. */
  readonly gaps: readonly number[]
  readonly from: From
}

const worstFrom: readonly From[] = ['guess', 'common', 'maker', 'measured']
const order: readonly State[] = ['short', 'tight', 'not known', 'holds']

/** Weighs every link of the chain; knock first, then the worst first. */
export function weighMargins(margins: readonly Margin[], solved: Solved, sheet: Sheet, thresholds: Thresholds = {}): readonly Weighed[] {
  const weighed = margins.map((m) => weigh(m, solved, sheet, thresholds[m.id] ?? m.tight))
  const rank = (w: Weighed): number => (w.margin.always === 'not known' ? -1 : order.indexOf(w.state))
  return weighed.sort((a, b) => rank(a) - rank(b) || worth(a) - worth(b))
}
/** What is left measured in its own threshold, so that bars and degrees can stand in one order. */
const worth = (w: Weighed): number => (w.left === null ? 0 : w.left / (w.tight || 1))

function weigh(margin: Margin, solved: Solved, sheet: Sheet, tight: number): Weighed {
  const from = worstFrom.find((f) => margin.rests.some((field) => fromAt(sheet, field) === f)) ?? 'common'
  const none = { id: margin.id, margin, demand: null, capacity: null, left: null, band: null, speed: null, tight, missing: [], failed: null, gaps: [], from }
  const restsMissing = margin.rests.filter((field) => valueAt(sheet, field) === null).map((f) => f.path)
  if (margin.always) return { ...none, state: margin.always, missing: restsMissing }
  if (restsMissing.length > 0) return { ...none, state: 'not known', missing: restsMissing }

  const points = margin.over === 'idle' ? [solved.idle] : margin.over === 'sweep' ? solved.points : [buildPoint(solved)]
  let worst: { left: number; demand: number; capacity: number; point: Point } | null = null
  const gaps: number[] = []
  const missing = new Set<string>()
  // Why this very link has no solution, and why another before it has none: only the first makes it short.
  let own: string | null = null
  let ownAt: number | null = null
  let other: string | null = null
  for (const point of points) {
    const demand = valueOf(margin.demand, point, sheet)
    const capacity = valueOf(margin.capacity, point, sheet)
    if (demand === null || capacity === null) {
      gaps.push(point.speed)
      for (const side of [margin.demand, margin.capacity]) {
        if (side.origin === 'field') { if (valueAt(sheet, side) === null) missing.add(side.path); continue }
        const why = point.failed[side.path]
        if (why && (why.link === margin.id || margin.shortBy?.includes(why.link))) { own ??= why.says; ownAt ??= point.speed } else if (why) other ??= why.says
        for (const path of point.missing[side.path] ?? []) missing.add(path)
      }
      continue
    }
    const left = leftOf(margin, demand, capacity)
    if (worst === null || left < worst.left) worst = { left, demand, capacity, point }
  }
  if (own !== null) return { ...none, state: 'short', speed: margin.over === 'build' ? null : ownAt, failed: own, gaps, ...(worst && { demand: worst.demand, capacity: worst.capacity, left: worst.left }) }
  if (worst === null) return { ...none, state: 'not known', missing: [...missing], failed: other, gaps }
  const band = margin.band && bandOf(margin, worst.point, worst.capacity)
  return {
    ...none, demand: worst.demand, capacity: worst.capacity, left: worst.left, band: band ?? null, gaps,
    speed: margin.over === 'sweep' ? worst.point.speed : margin.over === 'idle' ? solved.idle.speed : null,
    state: capped(band ? stateOfBand(band, tight) : stateOf(worst.left, tight), margin.best),
  }
}

/** What is asked of a build as a whole: its own values, and those that every point shares because they rest on the sheet alone. */
function buildPoint(solved: Solved): Point {
  const shared = solved.points[0] ?? solved.idle
  return { ...shared, speed: 0, values: { ...shared.values, ...solved.build }, missing: { ...shared.missing, ...solved.missing }, failed: { ...shared.failed, ...solved.failed } }
}

function valueOf(of: PointValue | Field, point: Point, sheet: Sheet): number | null {
  const value: unknown = of.origin === 'point' ? point.values[of.path] : valueAt(sheet, of as Field<Shape>)
  return typeof value === 'number' && Number.isFinite(value) ? value : null
}
function leftOf({ must, as }: Margin, demand: number, capacity: number): number {
  const spare = must === 'stay below' ? capacity - demand : demand - capacity
  if (as === 'difference') return spare
  const by = Math.abs(must === 'stay below' ? demand : capacity)
  return by === 0 ? Infinity : spare / by
}
function bandOf(margin: Margin, point: Point, capacity: number): readonly [number, number] | undefined {
  const ends = margin.band!.map((of) => point.values[of.path]).filter((x): x is number => x !== undefined).map((x) => leftOf(margin, x, capacity))
  return ends.length === 2 ? [Math.min(...ends), Math.max(...ends)] : undefined
}
const stateOf = (left: number, tight: number): State => (left < 0 ? 'short' : left < tight ? 'tight' : 'holds')
/** With a band: short only where the whole band is, holds only where the whole band does. */
const stateOfBand = ([low, high]: readonly [number, number], tight: number): State => (high < 0 ? 'short' : low >= tight ? 'holds' : 'tight')
const capped = (state: State, best: State | undefined): State => (best === 'tight' && state === 'holds' ? 'tight' : state)

/** The word for the state in this margin: most say `holds`, a flywheel is `inside`. */
export const stateWord = ({ margin, state }: Weighed): string => margin.words?.[state] ?? state

/** What is left, in words: `16 % left`, `4 % short`, `12 K over`. A share is of what is asked, so that it falls short rather than being over. */
export function leftWords({ margin, left }: Weighed, system: System = 'metric'): string {
  if (left === null) return ''
  // Nothing is asked: a share of nothing has no number.
  if (!Number.isFinite(left)) return 'all left'
  const size = Math.abs(left)
  const amount = margin.as === 'share' ? `${writeNumber(size * 100, 2)}\u202f%` : write(size, differenceOf(quantityOf(margin.capacity)), shownUnit(differenceOf(quantityOf(margin.capacity)), system), 2)
  const beyond = margin.must === 'stay above' ? 'under' : margin.as === 'share' ? 'short' : 'over'
  // Beside "over" or "left" a difference cannot be taken for a reading of a thermometer.
  return `${amount.replace('Δ°F', '°F')} ${left < 0 ? beyond : 'left'}`
}
export const quantityOf = (of: PointValue | Field): Quantity => {
  if (!isQuantity(of.shape)) throw new Error(`${of.path} is no quantity`)
  return of.shape
}
/** The quantity that a difference of two values is. */
export function differenceOf(q: Quantity): Quantity {
  if (q.kind === 'temperature') return { ...q, kind: 'temperatureDifference', show: ['K', 'Δ°F'] }
  if (q.kind === 'pressure' || q.kind === 'gaugePressure') return { ...q, kind: 'pressureDifference', show: [shownUnit(q).startsWith('bar') ? 'bar' : 'kPa', 'psi'] }
  return q
}

/** The margin's sentence with its numbers put in. */
export function sentence(w: Weighed, system: System = 'metric', nameOf: (path: string) => string = (p) => p): string {
  const { margin } = w
  if (margin.always) return margin.says
  if (w.state === 'not known') {
    if (w.missing.length > 0) return `Not known without ${list(w.missing.map(nameOf))}. ${margin.settle}`
    return `Not known: ${w.failed ?? 'the model has no value here.'}`
  }
  const put = (name: string): string => {
    if (name === 'left') return leftWords(w, system)
    if (name === 'speed') return w.speed === null ? '' : `${writeNumber((w.speed * 30) / Math.PI, 4)}\u202frpm`
    const of = name === 'demand' ? margin.demand : margin.capacity
    const value = name === 'demand' ? w.demand : w.capacity
    return value === null ? 'no value' : write(value, quantityOf(of), shownUnit(quantityOf(of), system))
  }
  if (w.failed !== null && w.state === 'short' && w.left === null) return w.failed
  const said = margin.says.replace(/\{(demand|capacity|left|margin|speed)\}/g, (_, name: string) => put(name === 'margin' ? 'left' : name))
  return w.failed !== null && w.state === 'short' ? `${w.failed} Elsewhere: ${said}` : said
}
const list = (names: readonly string[]): string => (names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)!}`)
