import { type State } from '../build/margin.ts'
import { normalShare } from './normalShare.ts'
import { rootSum } from './rootSum.ts'
import { deviations, type Work } from './sampling.ts'
import { shareInterval } from './shareInterval.ts'
import { normal95 } from './spread.ts'
import { correlation, interval95, meanAndDeviation, ranks } from './statistics.ts'

/** A share that was counted, with the interval in which the true one lies 95 times in 100. */
export type Counted = { readonly share: number; readonly low: number; readonly high: number }
/** How much of what a margin is out by comes from one input, and which way it moves the margin. */
export type Part = { readonly input: string; readonly name: string; readonly share: number; readonly up: boolean }

/** The chance that one link has what it is asked, in the model. */
export type Chance = {
  readonly id: string
  readonly title: string
  readonly state: State
  /** What is left as the build stands. */
  readonly left: number | null
  readonly tight: number
  /** Samples in which the model could tell. */
  readonly known: number
  /** It has at least what is asked of it. */
  readonly enough: Counted | null
  /** It has its reserve too: what is left lies above where tight begins. */
  readonly reserve: Counted | null
  /** Middle and 95 % interval of what is left. */
  readonly mean: number
  readonly interval: readonly [number, number]
  /** The three inputs that contribute most. */
  readonly parts: readonly Part[]
  readonly firstOrder: FirstOrder | null
}
/** The same by sensitivities alone. `linear`: its 95 % interval agrees with the sampled one, so that it may be trusted. */
export type FirstOrder = { readonly uncertainty: number; readonly enough: number; readonly reserve: number; readonly linear: boolean; readonly parts: readonly Part[] }

const most = 3

/** Counts the samples of every link; the one least likely to have what it is asked comes first, links that cannot be told last. */
export function chancesOf(work: Work, lefts: Float64Array): readonly Chance[] {
  const drawn = inputRanks(work)
  return work.weighed.map((_, column) => chanceOf(work, lefts, column, drawn)).sort((a, b) => rank(a) - rank(b))
}
const rank = ({ enough, reserve }: Chance): number => (enough === null ? Infinity : enough.share * 1000 + (reserve?.share ?? 0))

function chanceOf(work: Work, lefts: Float64Array, column: number, drawn: readonly Float64Array[]): Chance {
  const { samples } = work.plan
  const { id, margin, state, left, tight } = work.weighed[column]!
  const of = (item: number): number => lefts[item * work.weighed.length + column]!
  const all = Float64Array.from({ length: samples }, (_, item) => of(item))
  const told = all.filter((value) => !Number.isNaN(value))
  const common = { id, title: margin.title, state, left, tight, known: told.length }
  if (told.length === 0) return { ...common, enough: null, reserve: null, mean: NaN, interval: [NaN, NaN], parts: [], firstOrder: null }
  const interval = interval95(told)
  return {
    ...common, enough: counted(told, 0), reserve: counted(told, tight), mean: meanAndDeviation(told).mean, interval,
    parts: sampledParts(work, all, drawn), firstOrder: firstOrderOf(work, of, tight, interval),
  }
}

function counted(told: Float64Array, above: number): Counted {
  let count = 0
  for (const left of told) if (left >= above) count++
  const share = count / told.length
  return { share, ...shareInterval({ share, samples: told.length }) }
}

/** Ranks of what every input was out by: worked out once for all links. */
function inputRanks(work: Work): readonly Float64Array[] {
  const { samples } = work.plan
  const rows = work.inputs.map(() => new Float64Array(samples))
  const by = deviations(work, 0, samples)
  for (let item = 0; item < samples; item++) { const out = by(item); rows.forEach((row, i) => { row[item] = out[i]! }) }
  return rows.map(ranks)
}

/**
 * Share of each input by its squared rank correlation with what is left. With inputs independent of one another and a margin that rises or
 * falls with each, these are the first-order shares of its variance, told on ranks; what inputs do only together is in none of them.
 * Samples in which the link cannot be told count as the worst: they are where the build has no answer.
 */
function sampledParts(work: Work, all: Float64Array, drawn: readonly Float64Array[]): readonly Part[] {
  const places = ranks(all.map((left) => (Number.isNaN(left) ? -Infinity : left)))
  return largest(work, drawn.map((row) => { const r = correlation(row, places); return Math.sign(r) * r * r }))
}

function largest({ inputs, plan }: Work, signed: readonly number[]): readonly Part[] {
  // What chance alone would give an input that does nothing: four standard errors of a correlation, squared.
  const noise = 16 / plan.samples
  return signed.map((share, i): Part => ({ input: inputs[i]!.id, name: inputs[i]!.name, share: Math.abs(share), up: share > 0 }))
    .filter((part) => part.share > noise).sort((a, b) => b.share - a.share).slice(0, most)
}

/** JCGM 100, 5.1.2 with sensitivities from each input out by its standard uncertainty, up and down. */
function firstOrderOf(work: Work, of: (item: number) => number, tight: number, sampled: readonly [number, number]): FirstOrder | null {
  const base = work.plan.samples
  const middle = of(base)
  const moves = work.inputs.map((_, i) => (of(base + 1 + 2 * i) - of(base + 2 + 2 * i)) / 2)
  if (!Number.isFinite(middle) || !moves.every(Number.isFinite)) return null
  const uncertainty = rootSum(moves)
  const share = (above: number): number => (uncertainty > 0 ? normalShare({ z: (middle - above) / uncertainty }) : middle >= above ? 1 : 0)
  return {
    uncertainty, enough: share(0), reserve: share(tight), linear: agrees(middle, uncertainty, sampled),
    parts: uncertainty > 0 ? largest(work, moves.map((move) => Math.sign(move) * (move / uncertainty) ** 2)) : [],
  }
}

/**
 * Whether both ends of the two 95 % intervals agree within the numerical tolerance of the uncertainty, written with one significant digit.
 * Source: JCGM 101:2008, 7.9.2 and 8.1.
 */
export function agrees(middle: number, uncertainty: number, [low, high]: readonly [number, number]): boolean {
  if (uncertainty === 0) return low === high
  const tolerance = 0.5 * 10 ** Math.floor(Math.log10(Number(uncertainty.toPrecision(1))))
  return Math.abs(middle - normal95 * uncertainty - low) <= tolerance && Math.abs(middle + normal95 * uncertainty - high) <= tolerance
}
