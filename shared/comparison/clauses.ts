import { differenceOf, leftWords, quantityOf, stateWord } from '../build/margins.ts'
import { shaftSpeed, torque } from '../engine/quantities.ts'
import { type Quantity } from '../quantity/quantity.ts'
import { shownUnit, write, writeNumber, type System } from '../quantity/write.ts'
import { type Side } from './side.ts'
import { type Moved } from './movedMargins.ts'
import { linkName, lower, phrases } from './phrases.ts'
import { largestTorqueDifference, traitsOf, type Peak } from './traits.ts'

/** One thing that a choice buys or costs, with how much it counts: about one for a threshold’s worth near a link’s limit. */
export type Clause = { readonly good: boolean; readonly weight: number; readonly says: string; /** What it is about. */ readonly id: string }

/** To ten turns a minute: the sweep tells it no closer. */
const speedWords = (speed: number): string => write(Math.round((speed * 3) / Math.PI) * (Math.PI / 3), { ...shaftSpeed, whole: true })
const percent = (share: number): string => `${writeNumber(Math.abs(share) * 100, 2)}\u202f%`

/** What a driver and a dynamometer would notice. */
function traitClauses(a: Side, b: Side, system: System): readonly Clause[] {
  const [x, y] = [traitsOf(a.solved), traitsOf(b.solved)]
  const clauses: Clause[] = []
  const peak = (id: string, p: Peak | null, q: Peak | null, least: number, by: number, moreIsGood: boolean, says: (more: boolean, p: Peak, q: Peak) => string): void => {
    if (p && q && Math.abs(q.value - p.value) >= least) clauses.push({ id, good: (q.value > p.value) === moreIsGood, weight: Math.abs(q.value - p.value) / by, says: says(q.value > p.value, p, q) })
  }
  const amount = (of: Quantity, p: Peak, q: Peak): string => write(Math.abs(q.value - p.value), differenceOf(of), shownUnit(differenceOf(of), system), 2).replace('Δ°F', '°F')
  const both = (of: Quantity, p: Peak, q: Peak): string => `(${write(q.value, of, shownUnit(of, system))} at ${speedWords(q.speed)} against ${write(p.value, of, shownUnit(of, system))})`

  if (x.threshold !== null && y.threshold !== null) {
    const later = y.threshold - x.threshold
    if (Math.abs(later) >= fiftyRpm) clauses.push({ id: 'threshold', good: later < 0, weight: Math.abs(later) / (4 * fiftyRpm), says: `boost about ${speedWords(Math.abs(later))} ${later > 0 ? 'later' : 'earlier'} (from ${speedWords(y.threshold)} on against ${speedWords(x.threshold)})` })
  } else if (x.threshold !== y.threshold && a.solved.points.length > 0 && b.solved.points.length > 0) {
    clauses.push({ id: 'threshold', good: y.threshold !== null, weight: 20, says: y.threshold === null ? 'boost at no speed reaches its target' : `boost reaches its target at all, from ${speedWords(y.threshold)} on` })
  }
  const power = quantityFor('power')
  if (x.power) peak('power', x.power, y.power, 0.005 * x.power.value, 0.03 * x.power.value, true, (more, p, q) => `${amount(power, p, q)} ${more ? 'more' : 'less'} at the top ${both(power, p, q)}`)
  const low = largestTorqueDifference(a.solved.points, b.solved.points, Math.max(x.threshold ?? 0, y.threshold ?? 0))
  if (low && Math.abs(low.after / low.before - 1) >= 0.03) {
    const share = low.after / low.before - 1
    clauses.push({ id: 'low torque', good: share > 0, weight: Math.abs(share) / 0.08, says: `up to ${percent(share)} ${share > 0 ? 'more' : 'less'} torque while boost builds (${write(low.after, torque, shownUnit(torque, system))} against ${write(low.before, torque, shownUnit(torque, system))} at ${speedWords(low.speed)})` })
  }
  peak('back-pressure', x.backPressure, y.backPressure, 0.03, 0.1, false, (more, p, q) => `an engine that pushes against ${more ? 'more' : 'less'} (at most ${writeNumber(q.value, 3)} times manifold pressure before the turbine against ${writeNumber(p.value, 3)})`)
  const temperature = quantityFor('temperature')
  peak('exhaust', x.exhaust, y.exhaust, 5, 25, false, (more, p, q) => `exhaust ${amount(temperature, p, q)} ${more ? 'hotter' : 'cooler'} before the turbine`)
  peak('charge', x.charge, y.charge, 1, 5, false, (more, p, q) => `charge air ${amount(temperature, p, q)} ${more ? 'hotter' : 'cooler'}`)
  return clauses
}
const fiftyRpm = (50 * Math.PI) / 30
const quantityFor = (kind: 'power' | 'temperature'): Quantity => ({ id: kind, name: kind, symbol: '', kind, range: [0, 1], step: 1 })

/** Margins that a trait already tells. */
const toldByTrait: Readonly<Record<string, string>> = { 'back-pressure': 'back-pressure', 'charge-temperature': 'charge', 'exhaust-temperature': 'exhaust', 'boost-by-wanted-speed': 'threshold' }

/** Everything that a choice buys or costs. A link whose state a trait turns is told with that trait; of links that move for one reason, the one with least left is told. */
export function clausesOf(a: Side, b: Side, moved: readonly Moved[], system: System): readonly Clause[] {
  const clauses = [...traitClauses(a, b, system)]
  const seen = new Map<string, number>()
  for (const m of [...moved].sort((x, y) => reach(x) - reach(y))) {
    const good = betterOff(m)
    const trait = clauses.findIndex((c) => c.id === toldByTrait[m.id] && c.good === good)
    const { of, group } = phrases[m.id] ?? { of: `left of ${lower(m.before.margin.title)}`, group: undefined }
    const at = trait >= 0 ? trait : group === undefined ? undefined : seen.get(`${group} ${good}`)
    if (at !== undefined && (trait >= 0 || m.turn === 'same')) {
      const told = clauses[at]!
      clauses[at] = { ...told, weight: told.weight + turns[m.turn], says: trait >= 0 ? `${told.says}${turnWords(m)}` : withOthers(told) }
      continue
    }
    if (group !== undefined) seen.set(`${group} ${good}`, clauses.length)
    clauses.push({ id: m.id, good, weight: turns[m.turn] + Math.min(10, Math.abs(m.steps)) / (1 + Math.max(0, reach(m) - 1)), says: marginWords(m, of, system) })
  }
  return clauses.sort((x, y) => y.weight - x.weight)
}

const betterOff = ({ turn, change }: Moved): boolean => turn === 'better' || turn === 'told' || (turn === 'same' && (change ?? 0) > 0)
/** How near its limit a link comes, in its own threshold. */
const reach = ({ before, after }: Moved): number => Math.min(before.left ?? 0, after.left ?? 0) / (before.tight || 1)
/** A link that changes its state counts for more than any that only moves. */
const turns: Readonly<Record<Moved['turn'], number>> = { worse: 30, untold: 5, better: 20, told: 5, same: 0 }

function withOthers({ id, says }: Clause): string {
  const others = phrases[id]?.others
  return others === undefined || says.includes(others) ? says : `${says}, and likewise for ${others}`
}

const standing = (w: Moved['before']): string => (w.state === 'holds' ? 'holding' : stateWord(w))
/** What became of a link's state. */
const turnWords = (m: Moved): string => (m.turn === 'same' ? '' : `, which takes ${linkName(m.after)} from ${standing(m.before)} to ${standing(m.after)}`)

function marginWords(m: Moved, of: string, system: System): string {
  const { before, after, change } = m
  if (m.turn === 'told') return `${linkName(after)} can be told (${stateWord(after)})`
  if (m.turn === 'untold') return `${linkName(after)} can no longer be told (it was ${standing(before)})`
  if (change === null) return `${of}${turnWords(m)}`
  const more = `${Number.isFinite(change) ? `${changeWords(m, system)} ` : ''}${change > 0 ? 'more' : 'less'}`
  return `${more} ${of} (${leftWords(after, system)} against ${leftWords(before, system)})${turnWords(m)}`
}
function changeWords({ before: { margin }, change }: Moved, system: System): string {
  if (margin.as === 'share') return percent(change!)
  const of = differenceOf(quantityOf(margin.capacity))
  return write(Math.abs(change!), of, shownUnit(of, system), 2).replace('Δ°F', '°F')
}
