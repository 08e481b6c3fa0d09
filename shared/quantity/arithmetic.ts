import { addDependencies, create, divideDependencies, multiplyDependencies, parseDependencies, subtractDependencies, unaryMinusDependencies, unitDependencies, type MathNode, type Unit as MathUnit } from 'mathjs'
import { kinds, sameDim, type Dim } from './kinds.ts'
import { tidy } from './number.ts'
import { plainNumbers } from './numerals.ts'
import { type Quantity } from './quantity.ts'
import { gaugeOrAbsolute, meaning, refuse, settle, weigh, type Read, type Refused } from './read.ts'
import { respelled } from './respelled.ts'
import { dimOf, fits, sameDimension, unitOf, unitsNamed } from './units.ts'

const math = create({ addDependencies, subtractDependencies, multiplyDependencies, divideDependencies, unaryMinusDependencies, unitDependencies, parseDependencies })

type Value = number | MathUnit
/** The sum being read: which field it is for, how its units were spelt, and what units it has used so far. */
type Sum = { readonly of: Quantity; readonly typed: string; readonly spelt: ReadonlyMap<string, string>; united: boolean; absolute: boolean }
class Stop extends Error { readonly refused: Refused; constructor(refused: Refused) { super(refused.says); this.refused = refused } }
const stop = (...of: Parameters<typeof refuse>): Stop => new Stop(refuse(...of))
const base = ['m', 'kg', 's', 'K', 'A', 'mol'] as const

/** Reads a sum typed into a field: numbers, listed units, brackets and the four operations. mathjs parses and keeps the dimensions. */
export function readArithmetic(typed: string, of: Quantity, shown: string, more: { readonly at?: string } = {}): Read | Refused {
  const open = [...typed].filter((c) => c === '(').length
  if (open > 20) return refuse('syntax', `This sum has ${open} brackets; a field reads up to 20.`)
  if (/(?<![\w.])0[xbo]/i.test(typed)) return refuse('syntax', 'A field reads decimal numbers only.')
  const numbers = plainNumbers(tidy(typed))
  if (typeof numbers === 'object') return refuse('ambiguous', `“${numbers.numeral}” can mean ${numbers.ambiguous.join(' or ')}. Write it without the comma.`, numbers.ambiguous.map((n) => typed.replace(numbers.numeral, n)))
  try {
    const { text, spelt } = respelled(numbers)
    const sum: Sum = { of, typed: tidy(typed), spelt, united: false, absolute: false }
    return finish(evaluate(math.parse(text), sum), sum, shown, more)
  } catch (error) {
    if (error instanceof Stop) return error.refused
    return refuse('syntax', `“${typed}” cannot be read as a sum. Use numbers, units, brackets and + − * /.`)
  }
}

function finish(value: Value, { of, united, absolute }: Sum, shown: string, more: { readonly at?: string }): Read | Refused {
  const wanted = kinds[of.kind]
  const dim: Dim = typeof value === 'number' ? [0, 0, 0, 0, 0, 0] : dimensionOf(value)
  // A bare number is in the unit the field shows; one whose units have cancelled is not bare.
  if (typeof value === 'number' && !united) return settle(value, unitOf(of.kind, shown), of, more)
  if (!sameDim(dim, wanted.dim)) return refuse('dimension', `${of.name} is ${wanted.says}; this sum comes out as ${written(value)}.`)
  const si = typeof value === 'number' ? value : siOf(value)
  const asked = of.kind === 'pressure' && !absolute ? gaugeOrAbsolute(si, of) : null
  return asked ?? weigh(si, shown, of, more)
}

function evaluate(node: MathNode, sum: Sum): Value {
  if (math.isParenthesisNode(node)) return evaluate(node.content, sum)
  if (math.isConstantNode(node) && typeof node.value === 'number') return node.value
  if (math.isSymbolNode(node)) return unitValue(sum.spelt.get(node.name) ?? node.name, sum)
  if (!math.isOperatorNode(node)) throw stop('syntax', 'A field reads numbers, units, brackets and + − * / only.')
  const [first, second] = node.args as [MathNode, MathNode | undefined]
  if (node.op === '^') return power(first, second, sum)
  const a = evaluate(first, sum)
  if (second === undefined) {
    if (node.op === '-') return math.unaryMinus(a) as Value
    if (node.op === '+') return a
  } else {
    // "5 ft 3 in" would silently be a product.
    if (node.implicit && typeof a !== 'number' && !math.isSymbolNode(second) && !isPower(second)) throw stop('syntax', 'Put a sign between the parts of a sum, as in “5 ft + 3 in”.')
    const b = evaluate(second, sum)
    if (node.op === '*') return math.multiply(a, b) as Value
    if (node.op === '/') return math.divide(a, b) as Value
    if (node.op === '+' || node.op === '-') return added(node.op, a, b)
  }
  throw stop('syntax', 'A field reads numbers, units, brackets and + − * / only.')
}

const isPower = (node: MathNode): boolean => math.isOperatorNode(node) && node.op === '^'

/** Only a unit may be raised, and only to a small whole power: `m^2`. */
function power(baseNode: MathNode, exponent: MathNode | undefined, sum: Sum): Value {
  const n = exponent && math.isConstantNode(exponent) && typeof exponent.value === 'number' ? exponent.value : NaN
  if (!math.isSymbolNode(baseNode) || !Number.isInteger(n) || n < 1 || n > 4) throw stop('syntax', 'Powers are read in units only, such as m^2. Write the number out.')
  const one = unitValue(sum.spelt.get(baseNode.name) ?? baseNode.name, sum, n > 1)
  let value = one
  for (let i = 1; i < n; i++) value = math.multiply(value, one) as Value
  return value
}

function added(op: '+' | '-', a: Value, b: Value): Value {
  const bare = (typeof a === 'number') !== (typeof b === 'number')
  if (bare) throw stop('dimension', 'One part of this sum has a unit and another has none. Give each its unit.')
  try { return (op === '+' ? math.add(a, b) : math.subtract(a, b)) as Value } catch {
    throw stop('dimension', `This sum adds ${written(a)} to ${written(b)}.`)
  }
}

/** One of a unit. `factor`: it is only part of a compound, so that it need not be a unit of the field. */
function unitValue(spelling: string, sum: Sum, factor = false): Value {
  const { of, typed } = sum
  // Gauge or absolute is asked of the whole sum; every other question is asked here, and answered by the text with the unit replaced.
  const direct = of.kind === 'pressure' ? null : meaning(1, spelling, of)
  if (direct && !Array.isArray(direct) && direct.ok === false && direct.fault === 'ambiguous') throw stop('ambiguous', direct.says, direct.choices?.map((choice) => typed.replaceAll(spelling, choice.slice(2))))
  const named = unitsNamed(spelling)
  const unit = named.find((u) => fits(u, of.kind)) ?? named[0]
  if (unit === undefined) throw stop('unknown unit', `“${spelling}” is not a unit this handbook knows.`)
  if (!factor && !fits(unit, of.kind) && sameDimension(unit, of.kind)) throw stop('dimension', `${of.name} is ${kinds[of.kind].says}; ${unit.name} is ${kinds[unit.kinds[0]!].says}. They share a dimension but do not mean the same.`)
  if (unit.offset !== 0) throw stop('ambiguous', `Temperatures in ${unit.name} cannot be part of a sum: add and scale in K, or type the result.`)
  sum.united = true
  if (unit.kinds.length === 1 && unit.kinds[0] === 'pressure') sum.absolute = true
  return math.unit(unit.factor, dimensionText(dimOf(unit))) as unknown as Value
}

const dimensionText = (dim: Dim): string => dim.map((n, i) => (n === 0 ? '' : `${base[i]}^${n}`)).filter(Boolean).join(' ') || 'rad'
function dimensionOf(value: MathUnit): Dim {
  // mathjs counts mass, length, time, current, temperature, luminous intensity, amount of substance, angle, bit.
  const d = (value as unknown as { dimensions: number[] }).dimensions
  return [d[1]!, d[0]!, d[2]!, d[4]!, d[3]!, d[6]!]
}
const siOf = (value: MathUnit): number => (value as unknown as { value: number }).value
const written = (value: Value): string => {
  if (typeof value === 'number') return 'a plain number'
  const dim = dimensionOf(value)
  const match = Object.values(kinds).find((k) => sameDim(k.dim, dim))
  return match ? match.says : 'something with no name here'
}
