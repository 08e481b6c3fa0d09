import { integrate } from '../numerics/rungeKutta.ts'
import { type Lap } from './piece.ts'
import { type Plant } from './plant.ts'
import { coolant, core, metal, moved, oil, rail, boiled, ratesOf, stored, type Flows } from './rates.ts'

/** One moment: temperatures in kelvin. */
export type Moment = { readonly t: number; readonly lap: number; readonly metal: number; readonly coolant: number; /** In the sump. */ readonly oil: number; /** To the bearings, behind the cooler. */ readonly bearings: number; /** At full throttle now. */ readonly charge: number; readonly rail: number; readonly boiled: number }
export type Part = 'coolant' | 'oil' | 'charge'
export type Ran = {
  readonly moments: readonly Moment[]
  readonly state: readonly number[]
  /** First time at which each passes its limit; missing where it never does. */
  readonly passed: Readonly<Partial<Record<Part, number>>>
  /** When the bulk of the coolant boils: there the run ends, for beyond it these equations mean nothing. */
  readonly boils: number | null
  /** Heat in, out and stored over the run, each by its own sum, and what does not close as a share of the heat in. */
  readonly energy: { readonly in: number; readonly out: number; readonly stored: number; readonly open: number }
}

const relative = 1e-6
/** Weights of Boole's rule over four equal parts: a way of adding up that shares nothing with the integrator's own. */
const boole = [7 / 90, 32 / 90, 12 / 90, 32 / 90, 7 / 90]

/** Where a session begins: as it stands outside, or warmed up. */
export const startOf = (plant: Plant, how: 'cold' | 'warm'): number[] => {
  const { outside, opens, oilOpens } = plant.store
  return how === 'cold' ? [outside, outside, outside, outside, Math.min(outside, plant.railStart), 0] : [opens, opens, oilOpens, outside, plant.railStart, 0]
}

/** Drives a lap over and over until the time is up, or the coolant boils. */
export function drive(plant: Plant, lap: Lap, seconds: number, start: readonly number[], from = 0): Ran {
  const { store, limits } = plant
  const flows = lap.pieces.map((p) => plant.running(p))
  const moments: Moment[] = []
  let y = [...start], t = from, round = 0, into = 0, out = 0
  let boils: number | null = null
  const end = from + seconds
  const moment = (f: Flows): void => {
    moments.push({ t, lap: round, metal: y[metal]!, coolant: y[coolant]!, oil: y[oil]!, bearings: y[oil]! - moved(store, f, y).oil / f.oilRate, charge: plant.chargeAtFull(y[core]!), rail: y[rail]!, boiled: y[boiled]! })
  }
  moment(flows[0]!)
  while (t < end - 1e-6 && boils === null) {
    for (const [i, piece] of lap.pieces.entries()) {
      const f = flows[i]!
      const length = Math.min(piece.seconds, end - t)
      if (length <= 1e-6) break
      const at = [0, length / 4, length / 2, (3 * length) / 4, length]
      const course = integrate(ratesOf(store, f), { from: 0, to: length, start: y, relative, absolute: 1e-6, at, until: (_, now) => store.boiling - now[coolant]! })
      if (course.ended === 'too many steps') throw new RangeError('the session has no course with these numbers')
      if (course.ended === 'at the event') {
        boils = t + course.last.t
        const half = course.y.length > 0 ? moved(store, f, y) : moved(store, f, start)
        into += half.in * course.last.t
        out += half.out * course.last.t
      } else for (const [k, row] of course.y.entries()) {
        const q = moved(store, f, row)
        into += q.in * boole[k]! * length
        out += q.out * boole[k]! * length
      }
      y = [...course.last.y]
      t += course.last.t
      moment(f)
      if (boils !== null) break
    }
    round++
  }
  const kept = stored(store, start, y)
  return { moments, state: y, boils, passed: passings(moments, { coolant: limits.coolant, oil: limits.oil, charge: limits.charge }), energy: { in: into, out, stored: kept, open: (into - out - kept) / into } }
}

/** The engine stopped without a fan: how warm coolant and rail still get. */
export function stand(plant: Plant, seconds: number, start: readonly number[], from = 0): Ran {
  const { store, standing } = plant
  const count = Math.ceil(seconds / 10)
  const at = Array.from({ length: 4 * count + 1 }, (_, i) => (seconds * i) / (4 * count))
  const course = integrate(ratesOf(store, standing), { from: 0, to: seconds, start, relative, absolute: 1e-6, at, longest: 5 })
  let out = 0
  for (let i = 0; i + 4 < course.y.length; i += 4) for (let k = 0; k < 5; k++) out += moved(store, standing, course.y[i + k]!).out * boole[k]! * (at[i + 4]! - at[i]!)
  const kept = stored(store, start, course.last.y)
  const moments = course.y.filter((_, i) => i % 4 === 0).map((y, i): Moment => ({ t: from + at[4 * i]!, lap: 0, metal: y[metal]!, coolant: y[coolant]!, oil: y[oil]!, bearings: y[oil]!, charge: plant.chargeAtFull(y[core]!), rail: y[rail]!, boiled: y[boiled]! }))
  return { moments, state: course.last.y, boils: moments.find((m) => m.coolant >= store.boiling)?.t ?? null, passed: {}, energy: { in: 0, out, stored: kept, open: (out + kept) / Math.max(out, 1) } }
}

/** When each first passes its limit, on a straight line between two moments. */
function passings(moments: readonly Moment[], limits: Readonly<Record<Part, number>>): Partial<Record<Part, number>> {
  const of = (m: Moment, part: Part): number => (part === 'oil' ? m.bearings : m[part])
  const found: Partial<Record<Part, number>> = {}
  for (const part of ['coolant', 'oil', 'charge'] as const) {
    const i = moments.findIndex((m) => of(m, part) > limits[part])
    if (i === 0) found[part] = moments[0]!.t
    else if (i > 0) {
      const a = moments[i - 1]!, b = moments[i]!
      found[part] = a.t + ((b.t - a.t) * (limits[part] - of(a, part))) / (of(b, part) - of(a, part))
    }
  }
  return found
}
