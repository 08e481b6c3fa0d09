import { type Field } from '../build/field.ts'
import { type Thresholds, type Weighed } from '../build/margins.ts'
import { type Sheet } from '../build/sheet.ts'
import { inputsOf, moved, type Input, type Tolerances } from './inputs.ts'
import { draw, uncertaintyOf } from './spread.ts'
import { uniform } from './uniform.ts'

/** What a chance is to be worked out for. Together with the model it decides every number of the answer. */
export type Plan = { readonly sheet: Sheet; readonly thresholds: Thresholds; readonly tolerances: Tolerances; readonly samples: number; readonly seed: number }

/** The whole model: passed in, so that nothing here knows it. */
export type Model = { readonly fields: ReadonlyMap<string, Field>; readonly weigh: (sheet: Sheet, thresholds: Thresholds, speeds?: readonly number[]) => readonly Weighed[]; readonly speeds: (sheet: Sheet) => readonly number[] }

/**
 * A plan made ready. The work is a row of items that can be done in any order and in several places: each sample, then the build as it
 * stands, then each input out by its standard uncertainty, up and down.
 */
export type Work = {
  readonly plan: Plan
  readonly inputs: readonly Input[]
  /** The links that can be weighed, as the build stands, in the order of the columns. */
  readonly weighed: readonly Weighed[]
  readonly speeds: readonly number[]
  readonly items: number
}

export function workOf(plan: Plan, model: Model): Work {
  const inputs = inputsOf(plan.sheet, model.fields, plan.tolerances).filter((input) => input.spread.half > 0)
  const weighed = model.weigh(plan.sheet, plan.thresholds).filter((w) => !w.margin.always)
  return { plan, inputs, weighed, speeds: fewerSpeeds(model.speeds(plan.sheet), weighed), items: plan.samples + 1 + 2 * inputs.length }
}

/** Every other speed of the sweep, and each at which a link is worst: what a margin is depends on few others. */
function fewerSpeeds(all: readonly number[], weighed: readonly Weighed[]): readonly number[] {
  const worst = new Set(weighed.filter((w) => w.margin.over === 'sweep').map((w) => w.speed))
  return all.filter((speed, i) => i % 2 === 0 || i === all.length - 1 || worst.has(speed))
}

/** How far each input is out in one item. Each takes two numbers of the draw, so that any item can be made by itself. */
export function deviations({ plan, inputs }: Work, from: number, to: number): (item: number) => Float64Array {
  const next = uniform(plan.seed, 2 * inputs.length * Math.min(from, plan.samples))
  let drawn = from
  const out = new Float64Array(inputs.length)
  return (item) => {
    if (item >= plan.samples) {
      out.fill(0)
      const at = item - plan.samples - 1
      if (at >= 0) { const i = at >> 1; out[i] = uncertaintyOf(inputs[i]!.spread) * (at % 2 === 0 ? 1 : -1) }
      return out
    }
    if (item !== drawn++ || item >= to) throw new Error('samples are drawn in their order')
    for (let i = 0; i < inputs.length; i++) out[i] = draw(inputs[i]!.spread, next(), next())
    return out
  }
}

/**
 * What is left of every link in a run of items, row by row: NaN where the model cannot tell, minus infinity where the link has no solution
 * and is short for that. Gives the row’s number after each, so that others can be told how far it is.
 */
export function* leftsOf(work: Work, model: Model, from: number, to: number, lefts: Float64Array): Generator<number> {
  const columns = new Map(work.weighed.map((w, i) => [w.id, i]))
  const by = deviations(work, from, to)
  for (let item = from; item < to; item++) {
    const row = (item - from) * columns.size
    for (const w of model.weigh(moved(work.plan.sheet, work.inputs, by(item)), work.plan.thresholds, work.speeds)) {
      const column = columns.get(w.id)
      if (column !== undefined) lefts[row + column] = w.failed !== null && w.state === 'short' ? -Infinity : w.left ?? NaN
    }
    yield item - from + 1
  }
}
