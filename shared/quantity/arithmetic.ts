import { addDependencies, create, divideDependencies, multiplyDependencies, parseDependencies, subtractDependencies, unaryMinusDependencies, unitDependencies, type MathNode, type Unit as MathUnit } from 'mathjs'
import { kinds, type Dim } from './kinds.ts'
import { tidy } from './number.ts'
import { type Quantity } from './quantity.ts'
import { meaning, refuse, settle, weigh, type Read, type Refused } from './read.ts'
import { dimOf, unitOf, unitsNamed } from './units.ts'

const math = create({ addDependencies, subtractDependencies, multiplyDependencies, divideDependencies, unaryMinusDependencies, unitDependencies, parseDependencies })

type Value = number | MathUnit
class Stop extends Error { readonly refused: Refused; constructor(refused: Refused) { super(refused.says); this.refused = refused } }
const base = ['m', 'kg', 's', 'K', 'A', 'mol'] as const

/** Reads a sum typed into a field: numbers, listed units, brackets and the four operations. mathjs parses and keeps the dimensions. */
export function readArithmetic(typed: string, of: Quantity, shown: string, more: { readonly at?: string } = {}): Read | Refused {
  const open = [...typed].filter((c) => c === '(').length
  if (open > 20) return refuse('syntax', `This sum has ${open} brackets; a field reads up to 20.`)
  try {
    // A unit alone after a sum, "2 * 3 mm", belongs to the last number; mathjs binds it so.
    const value = evaluate(math.parse(respelled(tidy(typed))), of)
    if (typeof value === 'number') return settle(value, unitOf(of.kind, shown), of, more)
    if (dimensionOf(value).some((x, i) => x !== kinds[of.kind].dim[i])) return refuse('dimension', `${of.name} is ${kinds[of.kind].says}; this sum comes out as ${written(value)}.`)
    return weigh(siOf(value), shown, of, more)
  } catch (error) {
    if (error instanceof Stop) return error.refused
    return refuse('syntax', `“${typed}” cannot be read as a sum. Use numbers, units, brackets and + − * /.`)
  }
}

/** Units whose spelling would mean something else to the parser are given names of their own: `in`, `"`, `°C`, `%`, `cm²`. */
const names = new Map<string, string>()
function named(unit: string): string {
  const name = `u${[...unit].map((c) => c.charCodeAt(0).toString(36)).join('')}`
  names.set(name, unit)
  return name
}
function respelled(text: string): string {
  const compound = (spelt: string) => (unitsNamed(spelt).length > 0 ? named(spelt) : spelt)
  return text.replace(/(\d),(\d)/g, '$1.$2').replace(/[A-Za-zµΩ°²³]+\/[A-Za-z²³]+(?![\w^])/g, compound).replace(/(?:US|imp) (?:gal|fl oz|qt|pt)|Δ?°[CFR]|N m|lbf ft|lb ft|lbf in|mPa s|Pa s|µ\w+|["'%Ω°]|[A-Za-z]+[²³⁴]|\bin\b|\bft lb\b/g, (unit) => {
    const name = named(unit)
    return /^["'%°]/.test(unit) || /^Δ?°/.test(unit) ? ` ${name}` : name
  })
}

function evaluate(node: MathNode, of: Quantity): Value {
  if (math.isParenthesisNode(node)) return evaluate(node.content, of)
  if (math.isConstantNode(node) && typeof node.value === 'number') return node.value
  if (math.isSymbolNode(node)) return unitValue(names.get(node.name) ?? node.name, of)
  if (!math.isOperatorNode(node)) throw new Stop(refuse('syntax', 'A field reads numbers, units, brackets and + − * / only.'))
  const [first, second] = node.args as [MathNode, MathNode | undefined]
  if (node.op === '^') return power(first, second, of)
  const a = evaluate(first, of)
  if (second === undefined) {
    if (node.op === '-') return math.unaryMinus(a) as Value
    if (node.op === '+') return a
  } else {
    const b = evaluate(second, of)
    if (node.op === '*') return math.multiply(a, b) as Value
    if (node.op === '/') return math.divide(a, b) as Value
    if (node.op === '+' || node.op === '-') return sum(node.op, a, b)
  }
  throw new Stop(refuse('syntax', 'A field reads numbers, units, brackets and + − * / only.'))
}

/** Only a unit may be raised, and only to a small whole power: `m^2`. */
function power(baseNode: MathNode, exponent: MathNode | undefined, of: Quantity): Value {
  const n = exponent && math.isConstantNode(exponent) && typeof exponent.value === 'number' ? exponent.value : NaN
  if (!math.isSymbolNode(baseNode) || !Number.isInteger(n) || n < 1 || n > 4) throw new Stop(refuse('syntax', 'Powers are read in units only, such as m^2. Write the number out.'))
  let value = evaluate(baseNode, of)
  const one = value
  for (let i = 1; i < n; i++) value = math.multiply(value, one) as Value
  return value
}

function sum(op: '+' | '-', a: Value, b: Value): Value {
  const bare = (typeof a === 'number') !== (typeof b === 'number')
  if (bare) throw new Stop(refuse('dimension', 'One part of this sum has a unit and another has none. Give each its unit.'))
  try { return (op === '+' ? math.add(a, b) : math.subtract(a, b)) as Value } catch {
    throw new Stop(refuse('dimension', `This sum adds ${written(a)} to ${written(b)}.`))
  }
}

function unitValue(spelling: string, of: Quantity): Value {
  const named = unitsNamed(spelling)
  const direct = meaning(1, spelling, of)
  if (named.length === 0) {
    if (!Array.isArray(direct) && direct.ok === false) throw new Stop(direct)
    throw new Stop(refuse('unknown unit', `“${spelling}” is not a unit this handbook knows.`))
  }
  if (!Array.isArray(direct) && direct.ok === false && direct.fault === 'ambiguous') throw new Stop(direct)
  const unit = Array.isArray(direct) ? direct[1] : named[0]!
  if (unit.offset !== 0) throw new Stop(refuse('ambiguous', `Temperatures in ${unit.name} cannot be part of a sum: add and scale in K, or type the result.`))
  return math.unit(unit.factor, dimensionText(dimOf(unit))) as unknown as Value
}

const dimensionText = (dim: Dim): string => dim.map((n, i) => (n === 0 ? '' : `${base[i]}^${n}`)).filter(Boolean).join(' ') || 'rad'
function dimensionOf(value: MathUnit): number[] {
  // mathjs counts mass, length, time, current, temperature, luminous intensity, amount of substance, angle, bit.
  const d = (value as unknown as { dimensions: number[] }).dimensions
  return [d[1]!, d[0]!, d[2]!, d[4]!, d[3]!, d[6]!]
}
const siOf = (value: MathUnit): number => (value as unknown as { value: number }).value
const written = (value: Value): string => {
  if (typeof value === 'number') return 'a plain number'
  const dim = dimensionOf(value)
  const match = Object.values(kinds).find((k) => k.dim.every((x, i) => x === dim[i]))
  return match ? match.says : 'something with no name here'
}
