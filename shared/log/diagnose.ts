import { fieldValues } from '../build/fieldValues.ts'
import { type Point } from '../build/point.ts'
import { setEntry, type Sheet } from '../build/sheet.ts'
import { solveBuild } from '../build/solve.ts'
import { type Points } from '../quantity/quantity.ts'
import { boostOf, measuredIn } from './compare.ts'
import { channels, type ChannelId } from './channels.ts'
import { leastSquares } from './leastSquares.ts'
import { type Log } from './log.ts'
import { type Pull } from './pulls.ts'
import { suspects, type Suspect } from './suspects.ts'

/** One number that the log speaks against. */
export type Pointed = {
  readonly suspect: Suspect
  /** The sheet's value and the log's; of a curve, one and the factor on all of it. */
  readonly sheet: number; readonly log: number; readonly error: number
  /** Others whose change would look almost the same in this log, each with the value that it would need. */
  readonly alike: readonly { readonly suspect: Suspect; readonly sheet: number; readonly log: number }[]
}
export type Diagnosis = { readonly pointed: readonly Pointed[]; /** Mean squared difference in standard deviations, before and after. */ readonly before: number; readonly after: number; readonly used: readonly ChannelId[]; readonly left: 'nothing' | 'something' }

/** Channels that answer within a pull; coolant, oil and oil pressure follow minutes later and are not asked. */
const quick = ['boost', 'primaryDuty', 'secondaryDuty', 'fuelPressure', 'charge'] as const
/** How closely the model itself is trusted, beside the scatter of the samples: a share of the value, in kelvin for temperatures. Common practice, no source. */
const trust: Readonly<Record<(typeof quick)[number], number>> = { boost: 0.015, primaryDuty: 0.012, secondaryDuty: 0.012, fuelPressure: 0.008, charge: 1.5 }
const most = 4, leastGain = 0.06, leastSigmas = 3, likeness = 0.97

/**
 * Which numbers of the sheet would explain the difference. Measured boost and lambda are put in first, so that what a tuner chose is not
 * taken for a fault. Then each suspect is moved a little and carried through the whole model; one after another those are taken that explain
 * most, until the next would explain hardly anything; the model is solved again at each result. Yields how much is done.
 */
export function* diagnose(sheet: Sheet, log: Log, pull: Pull, bands: readonly number[]): Generator<number, Diagnosis> {
  const fields = fieldValues(sheet)
  const outside = fields.get('site.airPressure') as number
  const based = asDriven(sheet, log, pull, bands, outside)
  const used = quick.filter((id) => (id === 'boost' ? boostOf(log.of, outside) : log.of[id]) !== undefined)
  const measured = used.map((id) => measuredIn(log, pull, bands, id === 'boost' ? boostOf(log.of, outside)! : log.of[id]!))
  const solve = (s: Sheet): readonly Point[] => solveBuild(s, bands).points
  const predict = (points: readonly Point[]): number[] => used.flatMap((id) => points.map((p) => p.values[channels[id].value] ?? NaN))
  const base = predict(solve(based))
  const sigma = used.flatMap((id, c) => measured[c]!.map(({ mean, spread, count }) => (count === 0 ? Infinity : Math.hypot(spread / Math.sqrt(count), id === 'charge' ? trust[id] : trust[id] * Math.max(Math.abs(mean), 0.02)))))
  const seen = used.flatMap((_, c) => measured[c]!.map(({ mean }) => mean))
  const rows = sigma.map((_, i) => i).filter((i) => Number.isFinite(sigma[i]!) && Number.isFinite(base[i]!) && Number.isFinite(seen[i]!))
  const residual = (now: readonly number[]): number[] => rows.map((i) => (Number.isFinite(now[i]!) ? (seen[i]! - now[i]!) / sigma[i]! : 0))

  const usable = suspects.filter((s) => { const v = fields.get(s.path); return v !== null && v !== undefined })
  const slopes = new Map<Suspect, number[]>()
  for (const [k, s] of usable.entries()) {
    slopes.set(s, slopeOf(s, based, base, 1))
    yield (0.7 * (k + 1)) / usable.length
  }
  function slopeOf(s: Suspect, from: Sheet, now: readonly number[], at: number): number[] {
    const there = predict(solve(moved(from, s.path, 1 + s.step)))
    return rows.map((i) => { const d = (there[i]! - now[i]!) / sigma[i]! / (s.step * at); return Number.isFinite(d) ? d : 0 })
  }

  const chosen: Suspect[] = []
  let factors: number[] = [], current = based, now = base, r = residual(base)
  const squares = (v: readonly number[]): number => v.reduce((sum, x) => sum + x * x, 0)
  const before = squares(r)
  let left = before
  while (chosen.length < most && left / rows.length > 0.5) {
    let best: { s: Suspect; squares: number } | null = null
    for (const s of usable) {
      if (chosen.includes(s)) continue
      const fit = leastSquares(rowsOf([...chosen, s]), r, chosen.length + 1)
      if (fit && (!best || fit.squares < best.squares)) best = { s, squares: fit.squares }
    }
    if (!best || left - best.squares < Math.max(leastGain * before, leastSigmas ** 2)) break
    chosen.push(best.s)
    factors = [...factors, 1]
    // The model bends: solve again at what was found, twice.
    for (let turn = 0; turn < 3; turn++) {
      const fit = leastSquares(rowsOf(chosen), r, chosen.length)
      if (!fit) break
      factors = factors.map((f, k) => Math.min(2, Math.max(0.4, f + fit.x[k]!)))
      current = chosen.reduce((s, { path }, k) => moved(s, path, factors[k]!), based)
      now = predict(solve(current))
      r = residual(now)
      for (const [k, s] of chosen.entries()) slopes.set(s, slopeOf(s, current, now, factors[k]!))
    }
    left = squares(r)
    yield Math.min(0.98, 0.7 + 0.07 * chosen.length)
  }
  const fit = chosen.length > 0 ? leastSquares(rowsOf(chosen), r, chosen.length) : null
  const scatter = Math.max(1, Math.sqrt(left / Math.max(1, rows.length - chosen.length)))
  const pointed = chosen.map((suspect, k): Pointed => {
    const value = fields.get(suspect.path)
    const unit = typeof value === 'number' ? value : 1
    const own = slopes.get(suspect)!
    return {
      suspect, sheet: unit, log: unit * factors[k]!, error: fit ? unit * scatter * Math.sqrt(fit.covariance[k]![k]!) : 0,
      alike: usable.flatMap((s) => {
        const other = slopes.get(s)!
        if (s === suspect || chosen.includes(s) || Math.abs(cosine(own, other)) <= likeness) return []
        // Alike in small steps: what this one does by its factor, the other does by its own slope.
        const was = fields.get(s.path)
        const size = typeof was === 'number' ? was : 1
        const ratio = own.reduce((sum, x, i) => sum + x * other[i]!, 0) / squares(other)
        return [{ suspect: s, sheet: size, log: size * factors[k]! ** ratio }]
      }),
    }
  }).filter((p) => Math.abs(p.log - p.sheet) > 2 * p.error)
  return { pointed, before: before / rows.length, after: left / rows.length, used, left: left / rows.length > 4 ? 'something' : 'nothing' }

  function rowsOf(of: readonly Suspect[]): number[][] { const list = of.map((s) => slopes.get(s)!); return rows.map((_, i) => list.map((slope) => slope[i]!)) }
}

const cosine = (a: readonly number[], b: readonly number[]): number => {
  let ab = 0, aa = 0, bb = 0
  for (let i = 0; i < a.length; i++) { ab += a[i]! * b[i]!; aa += a[i]! ** 2; bb += b[i]! ** 2 }
  return ab / Math.sqrt(aa * bb || 1)
}

/** The sheet with one number, or a whole curve, times a factor. */
function moved(sheet: Sheet, path: string, factor: number): Sheet {
  const value = fieldValues(sheet).get(path)
  const next = typeof value === 'number' ? value * factor : { x: (value as Points).x, y: (value as Points).y.map((y) => y * factor) }
  return setEntry(sheet, path, { ...sheet.entries[path], value: next })
}

/** The sheet as it was driven: boost and lambda as measured. */
function asDriven(sheet: Sheet, log: Log, pull: Pull, bands: readonly number[], outside: number): Sheet {
  const boost = boostOf(log.of, outside)
  let driven = sheet
  const at = (values: ArrayLike<number>): { speed: number; mean: number }[] => measuredIn(log, pull, bands, values).flatMap(({ mean, count }, k) => (count > 0 ? [{ speed: bands[k]!, mean }] : []))
  if (boost) { const b = at(boost); driven = setEntry(driven, 'boost.target', { value: { x: b.map((p) => p.speed), y: b.map((p) => Math.max(p.mean, 1e3)) } }) }
  if (boost && log.of.lambda) {
    // Lambda stands over manifold pressure in the sheet: points in order of pressure, those that lie close together as one.
    const pairs = at(log.of.lambda).map((l, k) => ({ p: at(boost)[k]!.mean + outside, l: l.mean })).sort((a, b) => a.p - b.p)
    const merged: { p: number; l: number; n: number }[] = []
    for (const { p, l } of pairs) { const last = merged.at(-1); if (last && p - last.p < 5e3) { last.l = (last.l * last.n + l) / (last.n + 1); last.p = (last.p * last.n + p) / (last.n + 1); last.n++ } else merged.push({ p, l, n: 1 }) }
    if (merged.length >= 2) driven = setEntry(driven, 'engine.lambdaCurve', { value: { x: merged.map((m) => m.p), y: merged.map((m) => m.l) } })
    else if (merged.length === 1) driven = setEntry(driven, 'engine.lambdaCurve', { value: { x: [merged[0]!.p - 1e4, merged[0]!.p + 1e4], y: [merged[0]!.l, merged[0]!.l] } })
  }
  return driven
}
