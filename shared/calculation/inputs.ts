import { isQuantity, type CompressorMap, type Curve, type Points, type Quantity, type Shape } from '../quantity/quantity.ts'
import { weigh, read, type Read, type Refused } from '../quantity/read.ts'
import { shownUnit } from '../quantity/write.ts'
import { readGrade } from '../quantity/grade.ts'

export type ReadValue = { readonly ok: true; readonly value: unknown; readonly at?: string } | { readonly ok: false; readonly says: string }
/** How arithmetic is read; passed in, because mathjs is loaded only where it is needed. */
export type ReadArithmetic = (text: string, of: Quantity, shown: string, more: { readonly at?: string }) => Read | Refused

/** Reads one value given from outside: an SI number, text as a reader types it, a choice, a grade, a curve or a map. */
export function readValue(given: unknown, shape: Shape, arithmetic?: ReadArithmetic): ReadValue {
  if (shape.kind === 'choice') {
    return typeof given === 'string' && Object.hasOwn(shape.choices, given) ? { ok: true, value: given } : no(`${shape.name} is one of ${Object.keys(shape.choices).join(', ')}.`)
  }
  if (shape.kind === 'grade') return typeof given === 'string' ? readGrade(given) : no(`${shape.name} is an oil grade, such as 10W-40.`)
  if (shape.kind === 'curve') return readPoints(given, shape)
  if (shape.kind === 'map') return readMap(given, shape.name)
  if (!isQuantity(shape)) return no('unknown kind of input')
  if (typeof given === 'number') {
    const weighed = weigh(given, shownUnit(shape), shape)
    return weighed.ok ? { ok: true, value: weighed.value } : no(weighed.says)
  }
  if (typeof given !== 'string') return no(`${shape.name} is a number in SI units, or text with a unit.`)
  const first = read(given, shape)
  const done = first.ok === 'arithmetic' ? arithmetic?.(first.text, shape, shownUnit(shape), first.at === undefined ? {} : { at: first.at }) : first
  if (!done) return no(`${shape.name}: only a number with its unit is read here, no sum. Write the result.`)
  if (!done.ok) return no(done.choices ? `${done.says} Write ${done.choices.join(' or ')}.` : done.says)
  return done.at === undefined ? { ok: true, value: done.value } : { ok: true, value: done.value, at: done.at }
}

const no = (says: string): ReadValue => ({ ok: false, says })
/** A key that does not belong: whatever it was meant to say would be lost without a word. */
const stray = (of: object, known: readonly string[]): string | undefined => Object.keys(of).find((key) => !known.includes(key))?.slice(0, 40)
const numbers = (x: unknown): x is number[] => Array.isArray(x) && x.length <= 200 && x.every((n) => typeof n === 'number' && Number.isFinite(n))

/** A curve must be in order, without doubles, at least two points, inside what its quantities can be. */
function readPoints(given: unknown, shape: Curve): ReadValue {
  const points = typeof given === 'object' && given !== null ? given : {}
  const { x, y } = points as { x?: unknown; y?: unknown }
  if (!numbers(x) || !numbers(y)) return no(`${shape.name} is {"x":[…],"y":[…]} in SI units, up to 200 points.`)
  const more = stray(points, ['x', 'y'])
  if (more !== undefined) return no(`${shape.name} has a key that no curve has: ${more}.`)
  if (x.length !== y.length) return no(`${shape.name} has ${x.length} values of ${shape.x.name} and ${y.length} of ${shape.y.name}.`)
  if (x.length < 2) return no(`${shape.name} has ${x.length} point; a curve needs two or more.`)
  for (let i = 1; i < x.length; i++) {
    if (x[i]! === x[i - 1]!) return no(`${shape.name} has two points at the same ${shape.x.name}, the ${i} and ${i + 1}: keep one.`)
    if (x[i]! < x[i - 1]!) return no(`${shape.name} is not in order: point ${i + 1} has a smaller ${shape.x.name} than point ${i}. Sort it.`)
  }
  for (const [values, of] of [[x, shape.x], [y, shape.y]] as const) for (const [i, value] of values.entries()) {
    const weighed = weigh(value, shownUnit(of), of)
    if (!weighed.ok) return no(`${shape.name}, point ${i + 1}: ${weighed.says}`)
  }
  return { ok: true, value: { x, y } satisfies Points }
}

/** A map must have lines in order of speed that do not cross, each from surge to choke, efficiencies below one. */
export function readMap(given: unknown, name: string): ReadValue {
  const map = given as Partial<CompressorMap> | null
  if (typeof map !== 'object' || map === null || !Array.isArray(map.lines)) return no(`${name} is an object with "lines".`)
  const more = stray(map, ['name', 'referenceTemperature', 'referencePressure', 'lines', 'estimate'])
  if (more !== undefined) return no(`${name} has a key that no map has: ${more}.`)
  if (typeof map.name !== 'string' || map.name.length > 120) return no(`${name} has a name in up to 120 characters.`)
  if (map.estimate !== undefined && typeof map.estimate !== 'boolean') return no(`${name}: "estimate" is true or false.`)
  if (typeof map.referenceTemperature !== 'number' || !(map.referenceTemperature > 200 && map.referenceTemperature < 400)) return no(`${name} must state its reference temperature in K: it is never assumed.`)
  if (typeof map.referencePressure !== 'number' || !(map.referencePressure > 5e4 && map.referencePressure < 2e5)) return no(`${name} must state its reference pressure in Pa: it is never assumed.`)
  if (map.lines.length < 2 || map.lines.length > 30) return no(`${name} has ${map.lines.length} speed lines; it needs 2 to 30.`)
  let before = 0
  for (const [i, line] of map.lines.entries()) {
    const at = `${name}, line ${i + 1}`
    if (typeof line !== 'object' || line === null || !numbers(line.flow) || !numbers(line.ratio) || !numbers(line.efficiency) || typeof line.speed !== 'number') return no(`${at}: needs speed, flow, ratio and efficiency as numbers.`)
    const odd = stray(line, ['speed', 'flow', 'ratio', 'efficiency'])
    if (odd !== undefined) return no(`${at}: has a key that no line has: ${odd}.`)
    if (line.flow.length < 3 || line.flow.length !== line.ratio.length || line.flow.length !== line.efficiency.length) return no(`${at}: needs three or more points, as many of flow as of ratio and efficiency.`)
    if (!(line.speed < 1e5)) return no(`${at}: its speed lies far above what any compressor turns at.`)
    if (!(line.speed > before)) return no(`${at}: speeds must rise from line to line.`)
    before = line.speed
    for (let j = 0; j < line.flow.length; j++) {
      if (j > 0 && !(line.flow[j]! > line.flow[j - 1]!)) return no(`${at}, point ${j + 1}: flow must rise from surge to choke.`)
      if (j > 0 && line.ratio[j]! > line.ratio[j - 1]! + 0.05) return no(`${at}, point ${j + 1}: pressure ratio must fall from surge to choke.`)
      if (!(line.ratio[j]! >= 1 && line.ratio[j]! < 8)) return no(`${at}, point ${j + 1}: pressure ratio lies between 1 and 8.`)
      if (!(line.efficiency[j]! > 0.1 && line.efficiency[j]! < 1)) return no(`${at}, point ${j + 1}: efficiency lies between 0.1 and 1.`)
      if (!(line.flow[j]! > 0 && line.flow[j]! < 3)) return no(`${at}, point ${j + 1}: corrected flow lies between 0 and 3 kg/s.`)
    }
    const last = map.lines[i - 1]
    if (last && crosses(last, line)) return no(`${at} crosses the line below it.`)
  }
  return { ok: true, value: map as CompressorMap }
}

/** Whether the upper line lies under the lower one anywhere both are drawn. */
export function crosses(lower: CompressorMap['lines'][number], upper: CompressorMap['lines'][number]): boolean {
  const at = (line: typeof lower, flow: number): number | null => {
    for (let j = 1; j < line.flow.length; j++) if (flow >= line.flow[j - 1]! && flow <= line.flow[j]!) {
      const share = (flow - line.flow[j - 1]!) / (line.flow[j]! - line.flow[j - 1]!)
      return line.ratio[j - 1]! + share * (line.ratio[j]! - line.ratio[j - 1]!)
    }
    return null
  }
  return [...lower.flow, ...upper.flow].some((flow) => {
    const a = at(lower, flow)
    const b = at(upper, flow)
    return a !== null && b !== null && b <= a
  })
}
