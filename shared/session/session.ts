import { type FieldValues } from '../build/fieldValues.ts'
import { type Solved } from '../build/point.ts'
import { boilingTemperatureOfFuel } from '../fuel/boilingTemperatureOfFuel.ts'
import { untraced } from '../formula/trace.ts'
import { drive, stand, startOf, type Moment, type Part, type Ran } from './course.ts'
import { coolDown, type Lap } from './piece.ts'
import { plantFrom, type Change, type Plant } from './plant.ts'

export type Asked = { readonly lap: Lap; readonly minutes: number; readonly start: 'cold' | 'warm' }

/** What another cooler would buy: in the words of the trade, and what it changes. */
export const changes = {
  radiator: { says: 'A second radiator alike, beside the first, with air of its own', change: { radiators: 2 } },
  oilCooler: { says: 'A second oil cooler alike, with air of its own', change: { oilCoolers: 2 } },
  beside: { says: 'The charge cooler out of the radiator’s air', change: { coverage: 0 } },
  pump: { says: 'A quarter more coolant flow', change: { pump: 1.25 } },
} as const satisfies Readonly<Record<string, { readonly says: string; readonly change: Change }>>
export type ChangeId = keyof typeof changes

export type Summary = { readonly coolant: number; readonly oil: number; readonly charge: number; readonly metal: number; readonly passed: Ran['passed']; readonly boils: number | null; /** Whole laps before the first limit, or null where none is passed. */ readonly laps: number | null }
export type SessionResult = {
  readonly moments: readonly Moment[]
  readonly summary: Summary
  readonly energy: Ran['energy']
  readonly lap: { readonly name: string; readonly seconds: number; readonly length: number; /** Mean load weighed with shaft speed. */ readonly load: number }
  readonly limits: Plant['limits'] & { readonly boiling: number }
  /** Laps at cooling pace until coolant and oil stand clear of their limits again; null where the limit was never passed, Infinity where they never do. */
  readonly coolingLaps: number | null
  readonly stop: Stop
  readonly bought: readonly { readonly id: ChangeId; readonly says: string; readonly summary: Summary }[]
}
export type Stop = { readonly moments: readonly Moment[]; readonly coolant: number; readonly boils: number | null; readonly boiled: number; readonly rail: number; /** Temperature at which fuel boils in the rail under the held pressure; null where that is not known. */ readonly fuelBoils: number | null; readonly vapourAfter: number | null; readonly open: number }

const clear = 8, mostCooling = 12, stopFor = 3600

/** A whole session with its end and what would change it. Yields how much of the work is done. */
export function* session(fields: FieldValues, solved: Solved, asked: Asked): Generator<number, SessionResult> {
  const parts = 2 + Object.keys(changes).length
  const plant = untraced(() => plantFrom(fields, solved))
  const ran = untraced(() => run(plant, asked))
  yield 1 / parts
  const { stop, coolingLaps } = untraced(() => ({ stop: stopAfter(plant, ran), coolingLaps: coolingAfter(plant, asked, ran) }))
  yield 2 / parts
  const bought: { id: ChangeId; says: string; summary: Summary }[] = []
  for (const [i, [id, { says, change }]] of Object.entries(changes).entries()) {
    bought.push({ id: id as ChangeId, says, summary: untraced(() => summaryOf(run(plantFrom(fields, solved, change), asked), asked.lap)) })
    yield (3 + i) / parts
  }
  const { pieces, ...lap } = asked.lap
  const turns = pieces.reduce((sum, p) => sum + p.speed * p.seconds, 0)
  return {
    moments: ran.moments, summary: summaryOf(ran, asked.lap), energy: ran.energy, lap: { ...lap, load: pieces.reduce((sum, p) => sum + p.load * p.speed * p.seconds, 0) / turns },
    limits: { ...plant.limits, boiling: plant.store.boiling }, coolingLaps, stop, bought,
  }
}

/** The session at once. */
export function sessionOf(fields: FieldValues, solved: Solved, asked: Asked): SessionResult {
  const work = session(fields, solved, asked)
  for (;;) { const step = work.next(); if (step.done) return step.value }
}

const run = (plant: Plant, { lap, minutes, start }: Asked): Ran => drive(plant, lap, minutes * 60, startOf(plant, start))

function summaryOf({ moments, passed, boils }: Ran, lap: Lap): Summary {
  const most = (of: (m: Moment) => number): number => moments.reduce((top, m) => Math.max(top, of(m)), -Infinity)
  const first = Math.min(...Object.values(passed), boils ?? Infinity)
  return { coolant: most((m) => m.coolant), oil: most((m) => m.bearings), charge: most((m) => m.charge), metal: most((m) => m.metal), passed, boils, laps: Number.isFinite(first) ? Math.floor(first / lap.seconds) : null }
}

/** From the end of the run, cooling laps until coolant and oil are clear of their limits. */
function coolingAfter(plant: Plant, { lap }: Asked, ran: Ran): number | null {
  const hot = (['coolant', 'oil'] as Part[]).some((part) => ran.passed[part] !== undefined) || ran.boils !== null
  if (!hot) return null
  const slow = coolDown(lap)
  let state = ran.state.map((v, i) => (i === 1 ? Math.min(v, plant.store.boiling - 0.01) : v))
  for (let laps = 1; laps <= mostCooling; laps++) {
    const one = drive(plant, slow, slow.seconds, state)
    state = [...one.state]
    const last = one.moments.at(-1)!
    if (last.coolant <= plant.limits.coolant - clear && last.bearings <= plant.limits.oil - clear) return laps
  }
  return Infinity
}

function stopAfter(plant: Plant, ran: Ran): Stop {
  const stopped = stand(plant, stopFor, ran.state)
  const most = (of: (m: Moment) => number): number => stopped.moments.reduce((top, m) => Math.max(top, of(m)), -Infinity)
  const fuelBoils = plant.held === null ? null : boilingTemperatureOfFuel({ reid: plant.reid, pressure: plant.held + plant.outside.pressure })
  return {
    moments: stopped.moments, coolant: most((m) => m.coolant), boils: stopped.boils, boiled: stopped.state[5]!, rail: most((m) => m.rail), fuelBoils, open: stopped.energy.open,
    vapourAfter: fuelBoils === null ? null : stopped.moments.find((m) => m.rail >= fuelBoils)?.t ?? null,
  }
}
