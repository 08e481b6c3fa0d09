import { leftWords } from '../build/margins.ts'
import { type System } from '../quantity/write.ts'
import { clausesOf, type Clause } from './clauses.ts'
import { moreWords, valueWords, type Differing } from './differing.ts'
import { type Moved } from './movedMargins.ts'
import { leftOut, linkName, lower } from './phrases.ts'
import { type Side } from './side.ts'

/** How many things are told on each side: more are in the table. */
const most = 4
/** Below this a change is not worth a word. */
const least = 0.15

/** What the second build buys and costs against the first, sentence by sentence, as someone would say it who has built some. */
export function inWords(a: Side, b: Side, differs: readonly Differing[], moved: readonly Moved[], system: System = 'metric'): readonly string[] {
  const numbers = differs.filter((d) => !d.sourceOnly)
  const [first, second] = namesOf(a, b)
  if (numbers.length === 0) return [sameNumbers(first, second, differs)]
  const opening = openingWords(first, second, numbers, system)
  const clauses = clausesOf(a, b, moved, system)
  const buys = worthAWord(clauses.filter((c) => c.good))
  const costs = worthAWord(clauses.filter((c) => !c.good))
  const unsaid = leftOut.filter(({ of }) => numbers.some((d) => of.test(d.path))).slice(0, 2).map(({ says }) => says)
  return [
    opening,
    ...balance(buys, costs),
    ...verdict(buys, costs, numbers, moved, system),
    ...unsaid,
    ...(unsaid.some((says) => says.includes('Knock')) ? [] : ['Knock is not known for either.']),
  ]
}

/** What counts; where nothing does, the one thing that moved most. */
function worthAWord(clauses: readonly Clause[]): readonly Clause[] {
  const counts = clauses.filter((c) => c.weight >= least)
  return counts.length > 0 ? counts : clauses.slice(0, 1)
}

export function namesOf(a: Side, b: Side): readonly [string, string] {
  return a.sheet.name === b.sheet.name ? ['the first build', 'the second build'] : [a.sheet.name, b.sheet.name]
}
const capital = (text: string): string => text[0]!.toUpperCase() + text.slice(1)
const list = (parts: readonly string[], between = ', '): string => (parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(between)}${between === ', ' ? ' and ' : '; and '}${parts.at(-1)!}`)

function sameNumbers(first: string, second: string, differs: readonly Differing[]): string {
  if (differs.length === 0) return `${capital(first)} and ${second} are the same in every number.`
  return `${capital(second)} has the same numbers as ${first}, so that every link has the same left. They differ only in where ${differs.length === 1 ? 'one number' : `${differs.length} numbers`} came from: ${list(differs.slice(0, most).map((d) => lower(d.name)))}${differs.length > most ? ' and others' : ''}.`
}

function openingWords(first: string, second: string, numbers: readonly Differing[], system: System): string {
  const one = (d: Differing): string => {
    const more = moreWords(d)
    return `${lower(d.name)} ${valueWords(d.after.value, d.field, system)} instead of ${valueWords(d.before.value, d.field, system)}${more ? ` (${more})` : ''}`
  }
  const head = `${capital(second)} differs from ${first} in ${numbers.length === 1 ? 'one number' : `${numbers.length} numbers`}`
  return numbers.length <= 3 ? `${head}: ${list(numbers.map(one), '; ')}.` : `${head}: ${list(byPart(numbers))}.`
}

const parts: readonly (readonly [RegExp, string])[] = [
  [/^site\./, 'of weather'], [/^(engine|idle)\./, 'of the engine'], [/^(spark|electric)\./, 'of spark and electrics'], [/^boost\./, 'of turbocharging'], [/^fuel\./, 'of fuel'], [/^oil\./, 'of oil'],
  [/^cooling\./, 'of cooling'], [/^(driveline|car)\./, 'of car and driveline'],
]
const byPart = (numbers: readonly Differing[]): readonly string[] => parts.flatMap(([of, words]) => { const count = numbers.filter((d) => of.test(d.path)).length; return count > 0 ? [`${count} ${words}`] : [] })

function balance(buys: readonly Clause[], costs: readonly Clause[]): readonly string[] {
  if (buys.length === 0 && costs.length === 0) return ['In this model it moves nothing.']
  const say = (what: string, clauses: readonly Clause[]): string => `${what}: ${list(clauses.slice(0, most).map((c) => c.says), '; ')}.`
  return [
    buys.length > 0 ? say('What it buys', buys) : 'It buys nothing that this model sees.',
    costs.length > 0 ? say('What it costs', costs) : 'Nothing in this model pays for it.',
  ]
}

/** What to make of it. */
function verdict(buys: readonly Clause[], costs: readonly Clause[], numbers: readonly Differing[], moved: readonly Moved[], system: System): readonly string[] {
  const titles = (of: readonly Moved[]): string => list(of.map((m) => linkName(m.after)))
  const worse = moved.filter((m) => m.turn === 'worse')
  const short = worse.filter((m) => m.after.state === 'short')
  const tight = worse.filter((m) => m.after.state === 'tight')
  const mended = moved.filter((m) => m.turn === 'better' && m.before.state === 'short')
  const says: string[] = []
  if (mended.length > 0) says.push(`It mends ${titles(mended)}.`)
  if (short.length > 0) says.push(`It does not hang together like this: ${titles(short)} ${short.length === 1 ? 'comes' : 'come'} out short. ${helps(short[0]!)}`.trim())
  else if (tight.length > 0) says.push(`It leaves ${titles(tight)} tight: good enough once the numbers behind ${tight.length === 1 ? 'it' : 'them'} are measured.`)
  if (short.length === 0) says.push(...(numbers.some((d) => turbocharger.test(d.path)) ? match(buys, costs) : sameEngine(buys, costs, moved, system)))
  return says
}

const turbocharger = /^boost\.(turbineCapacity|turbineEfficiency|compressorMap)$/
const top = new Set(['power', 'back-pressure', 'choke', 'compressor-overspeed'])

/** A turbocharger is chosen between the speed at which boost is there and the room at the top. */
function match(buys: readonly Clause[], costs: readonly Clause[]): readonly string[] {
  const gained = buys.some((c) => top.has(c.id))
  const lost = costs.some((c) => top.has(c.id))
  if (costs.some((c) => c.id === 'threshold')) {
    return [gained ? 'Worth it where the car lives at high speed; on the road the later boost is felt every time, what it buys at the top seldom.' : 'Later boost with nothing at the top to show for it: the first is the better match for this engine.']
  }
  if (!buys.some((c) => c.id === 'threshold')) return []
  return [lost ? 'Worth it where pulling out of corners counts for more than the last of the power.' : 'Earlier boost, and nothing at the top pays for it: the better match for this engine, if the rest of the table agrees.']
}

const driven = new Set(['threshold', 'power', 'low torque', 'back-pressure', 'exhaust', 'charge'])

/** Where nothing that the engine does has changed, a choice only moves reserve. */
function sameEngine(buys: readonly Clause[], costs: readonly Clause[], moved: readonly Moved[], system: System): readonly string[] {
  if ([...buys, ...costs].some((c) => driven.has(c.id))) return []
  const linkOf = (of: readonly Clause[]): Moved | undefined => moved.find((m) => m.id === of[0]?.id && m.turn === 'same' && m.before.left !== null)
  const [gains, gives] = [linkOf(buys), linkOf(costs)]
  const same = 'What the engine does is the same: '
  if (gives) {
    const kept = leftWords(gives.after, system)
    const enough = gives.after.left! >= gives.after.tight
    const of = linkName(gives.after)
    return [`${same}${gains ? 'reserve moves from one link to another' : 'it gives up reserve'}, and ${of} keeps ${enough ? `enough (${kept})` : `less than is wanted (${kept})`}.`]
  }
  if (!gains) return []
  return [gains.before.left! >= gains.before.tight ? `${same}this is reserve on a link that already had its reserve.` : `${same}this is reserve where there was too little.`]
}

const helps = ({ after }: Moved): string => {
  const remedy = after.margin.remedies[0]
  return remedy ? `What helps: ${lower(remedy.says).replace(/[.!?]$/, '')}.` : ''
}
