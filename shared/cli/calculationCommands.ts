import { valuesFor } from '../build/demo.ts'
import { solveFor } from '../calculation/backwards.ts'
import { labelOf, NoAnswer, quantityOf, run, type AnyCalculation, type Input } from '../calculation/calculation.ts'
import { readValue } from '../calculation/inputs.ts'
import { reachable } from '../calculation/reaches.ts'
import { type Entry } from '../formula/trace.ts'
import { readArithmetic } from '../quantity/arithmetic.ts'
import { isQuantity, type Quantity, type Shape } from '../quantity/quantity.ts'
import { siUnit } from '../quantity/siUnit.ts'
import { write } from '../quantity/write.ts'
import { BadInput } from './badInput.ts'
import { type Workshop } from './workshop.ts'

/** Every calculation with its inputs and outputs, as the contract tells them. */
export const listCommand = (shop: Workshop) => [...shop.registry.calculations.values()].map((c) => summary(shop, c))

/** The same with the formulas it can reach, their sources and ranges, cautions and article. */
export function describeCommand(shop: Workshop, id: unknown) {
  const of = calculationOf(shop, id)
  const formulas = reachable(of, defaults(shop, of)).map((formula) => {
    const known = shop.registry.formulas.get(formula)!
    const { about } = known
    const source = shop.registry.sources[about.source[0]]
    return {
      id: formula, name: about.name,
      ...('equation' in about && { equation: about.equation }), ...('holds' in about && { holds: about.holds }),
      ...('table' in about && { table: about.table }), ...('steps' in about && { steps: about.steps }),
      ...(about.units && { units: about.units }),
      source: { id: about.source[0], place: about.source[1], ...source },
      range: Object.keys(known.formula.range).length > 0 ? known.formula.range : 'source states no range',
      ...(about.notes && { notes: about.notes }),
    }
  })
  return { ...summary(shop, of), asks: of.asks, leavesOut: of.leavesOut, formulas, cautions: of.cautions, article: of.article }
}

/** Runs a calculation. Inputs left out take the demo build's values. */
export function runCommand(shop: Workshop, id: unknown, given: unknown) {
  const of = calculationOf(shop, id)
  const values = valuesGiven(shop, of, given)
  const { outputs, says, trace } = answered(() => run(of, values))
  const written = says.replace(/\{(\w+)\}/g, (_, name: string) => inWords(of, name, { ...values, ...outputs }))
  return { inputs: values, outputs, notes: [written, of.leavesOut, ...outsideNotes(shop, trace)], trace }
}

/** Solves for one input: `wanted` holds one output by name, and may hold other inputs to set. */
export function solveCommand(shop: Workshop, id: unknown, input: string | undefined, wanted: unknown) {
  const of = calculationOf(shop, id)
  if (!input || !Object.hasOwn(of.in, input) || !isQuantity(of.in[input]!.shape)) throw new BadInput('input', `${of.id} has no number ${(input ?? '').slice(0, 60)} to solve for: ${Object.keys(of.in).filter((n) => isQuantity(of.in[n]!.shape)).join(', ')}.`)
  if (typeof wanted !== 'object' || wanted === null) throw new BadInput('wanted', 'Give {"output": value}.')
  const output = Object.keys(wanted).find((name) => Object.hasOwn(of.out, name))
  if (!output) throw new BadInput('wanted', `Name one of the outputs: ${Object.keys(of.out).join(', ')}.`)
  const { [output]: target, ...others } = wanted as Record<string, unknown>
  const q = quantityOf(of.out[output]!)
  const value = one(target, { ...q, range: [-Infinity, Infinity] } as Quantity, output)
  const values = valuesGiven(shop, of, others)
  const back = answered(() => solveFor(of, values, input, output, value as number))
  return { input, output, wanted: value, unit: siUnit(of.in[input]!.shape), values: back.values, jumps: back.jumps, notes: back.notes }
}

function calculationOf(shop: Workshop, id: unknown): AnyCalculation {
  const of = typeof id === 'string' ? shop.registry.calculations.get(id) : undefined
  if (!of) throw new BadInput('id', typeof id === 'string' ? `There is no calculation ${id.slice(0, 60)}; "list" names all.` : 'Name a calculation; "list" names all.')
  return of
}
const defaults = (shop: Workshop, of: AnyCalculation) => valuesFor(of, shop.demo, shop.demoPoint())

function summary(shop: Workshop, of: AnyCalculation) {
  const start = defaults(shop, of)
  return {
    id: of.id, title: of.title, theme: of.theme,
    inputs: Object.entries(of.in).map(([name, input]) => ({
      id: name, label: labelOf(input), dimension: dimensionOf(input.shape), unit: siUnit(input.shape), default: start[name],
      kind: isQuantity(input.shape) ? 'number' : input.shape.kind, ...(input.shape.kind === 'choice' && { choices: input.shape.choices }), origin: input.origin,
    })),
    outputs: Object.entries(of.out).map(([name, out]) => ({ id: name, label: ('label' in out && out.label) || quantityOf(out).name, dimension: quantityOf(out).kind, unit: siUnit(quantityOf(out)) })),
  }
}
const dimensionOf = (shape: Shape): string => (isQuantity(shape) ? shape.kind : shape.kind === 'curve' ? `${shape.y.kind} over ${shape.x.kind}` : shape.kind)

function valuesGiven(shop: Workshop, of: AnyCalculation, given: unknown = {}): Record<string, unknown> {
  if (typeof given !== 'object' || given === null || Array.isArray(given)) throw new BadInput('inputs', 'Inputs are an object: {"name": value}.')
  const values: Record<string, unknown> = { ...defaults(shop, of) }
  const set = new Set<string>()
  for (const [name, raw] of Object.entries(given)) {
    const input = Object.hasOwn(of.in, name) ? of.in[name] : undefined
    if (!input) throw new BadInput(name.slice(0, 60), `${of.id} has no input ${name.slice(0, 60)}: ${Object.keys(of.in).join(', ')}.`)
    if (raw === null && 'optional' in input) { values[name] = null; continue }
    const read = readValue(raw, input.shape, readArithmetic)
    if (!read.ok) throw new BadInput(name, read.says)
    values[name] = read.value
    set.add(name)
    if (read.at !== undefined) pairAt(of, name, input, read.at, values, set)
  }
  return values
}

/** "650 cc/min at 3 bar" sets the rated pressure that stands beside the flow. */
function pairAt(of: AnyCalculation, name: string, input: Input, at: string, values: Record<string, unknown>, set: ReadonlySet<string>): void {
  const path = input.origin === 'field' ? input.at : undefined
  const pair = Object.entries(of.in).find(([, i]) => path !== undefined && i.origin === 'field' && i.path === path)
  if (!pair) throw new BadInput(name, `Leave out “at ${at}”: no rated pressure stands beside this number.`)
  if (set.has(pair[0])) throw new BadInput(name, `“at ${at}” and ${pair[0]} say the same thing twice: give one.`)
  values[pair[0]] = one(at, pair[1].shape, name)
}

function one(raw: unknown, shape: Shape, field: string): unknown {
  const read = readValue(raw, shape, readArithmetic)
  if (!read.ok) throw new BadInput(field, read.says)
  return read.value
}
function answered<T>(work: () => T): T {
  try { return work() } catch (error) { if (error instanceof NoAnswer) throw new BadInput(error.link, error.message); throw error }
}
function inWords(of: AnyCalculation, name: string, values: Readonly<Record<string, unknown>>): string {
  const out = of.out[name]
  const shape = out ? quantityOf(out) : of.in[name]?.shape
  const value = values[name]
  return shape && isQuantity(shape) && typeof value === 'number' ? write(value, shape) : String(value)
}
function outsideNotes(shop: Workshop, trace: readonly Entry[]): string[] {
  return [...new Set(trace.flatMap((e) => ('outside' in e ? e.outside.map((name) => `${shop.registry.formulas.get(e.id)?.about.name ?? e.id}: ${name} lies outside the range that its source states; computed all the same.`) : [])))]
}
