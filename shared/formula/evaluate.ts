import { all, create, type MathNode } from 'mathjs'
import { kinds, type Dim } from '../quantity/kinds.ts'
import { unitsNamed, dimOf } from '../quantity/units.ts'
import { isQuantity, type Quantity, type Shape } from '../quantity/quantity.ts'
import { type About } from './formula.ts'

/**
 * Evaluates printed equations, for the tests that hold them against the code: in value with plain numbers, in dimension with
 * mathjs units. Not for the browser.
 */
// mathjs calls numbers equal that differ by a part in 10^12, also inside max and min; the code does not.
const math = create(all!, { relTol: 1e-15, absTol: 1e-300 })
const base = ['m', 'kg', 's', 'K', 'A', 'mol']
const text = (dim: Dim): string => dim.map((n, i) => (n === 0 ? '' : `${base[i]}^${n}`)).filter(Boolean).join(' ')

export const parseEquation = (equation: string): MathNode => math.parse(equation)

/** The equation's value for SI inputs; empirical ones are given their numbers in the units they declare. */
export function valueOf(equation: string, about: About, x: Readonly<Record<string, unknown>>): number {
  const scope: Record<string, unknown> = {}
  for (const [name, value] of Object.entries(x)) scope[name] = typeof value === 'number' ? inDeclared(name, value, about) : value
  for (const [name, c] of Object.entries(about.constants ?? {})) scope[name] = c.value
  return Number(math.evaluate(equation, scope))
}

/** SI number in the unit in which the equation takes it, and back for an output. */
export function inDeclared(name: string, si: number, about: About): number {
  const unit = about.units?.[name]
  if (unit === undefined) return si
  const u = unitsNamed(unit)[0]
  if (!u) throw new Error(`${about.name}: no unit ${unit}`)
  return (si - u.offset) / u.factor
}

/** The dimension an equation comes out in, evaluated with mathjs units; throws where it adds what cannot be added. */
export function dimensionOf(equation: string, about: About, x: Readonly<Record<string, number>>): number[] {
  const scope: Record<string, unknown> = {}
  for (const [name, shape] of Object.entries(about.in)) if (isQuantity(shape)) scope[name] = carried(inDeclared(name, x[name] ?? 1, about), shape, about.units?.[name] !== undefined)
  if (!('id' in about.out) || typeof about.out.id !== 'string') {
    for (const [name, q] of Object.entries(about.out as Record<string, Quantity>)) scope[name] = carried(x[name] ?? 1, q, about.units?.[name] !== undefined)
  } else scope['out'] = carried(x['out'] ?? 1, about.out as Quantity, about.units?.['out'] !== undefined)
  for (const [name, c] of Object.entries(about.constants ?? {})) {
    const u = unitsNamed(c.unit)[0]
    const unit = u ? text(dimOf(u)) : c.unit.replace(/²/g, '^2').replace(/³/g, '^3').replace(/⁴/g, '^4')
    scope[name] = unit === '' ? c.value : math.unit(c.value, unit)
  }
  const out = math.evaluate(equation, scope) as unknown
  if (typeof out === 'number') return [0, 0, 0, 0, 0, 0]
  const d = (out as { dimensions: number[] }).dimensions
  return [d[1]!, d[0]!, d[2]!, d[4]!, d[3]!, d[6]!].map((n) => Math.round(n * 1e9) / 1e9)
}

/** A number with its unit, or bare where it has none or the equation is empirical in a declared unit. Angles count as plain. */
function carried(si: number, q: Quantity, declared: boolean): unknown {
  const dim = text(kinds[q.kind].dim)
  return declared || dim === '' ? si : math.unit(si, dim)
}

export const dimOfShape = (s: Shape): Dim => (isQuantity(s) ? kinds[s.kind].dim : [0, 0, 0, 0, 0, 0])
