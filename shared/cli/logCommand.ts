import { NoAnswer } from '../calculation/calculation.ts'
import { checkLog, stoichiometricOf } from '../log/check.ts'
import { slow } from '../log/compare.ts'
import { pullsOf, type Pull } from '../log/pulls.ts'
import { siUnit } from '../quantity/siUnit.ts'
import { channels } from '../log/channels.ts'
import { BadInput } from './badInput.ts'
import { logFrom } from './logFrom.ts'
import { sheetFrom } from './sheetFrom.ts'
import { type Workshop } from './workshop.ts'

/** Lays a log over a build: pulls, measured over predicted, fitted air and fuel, what the difference points at. */
export async function logCommand(shop: Workshop, args: readonly string[], readText: (path: string) => string, readBytes: (path: string) => Uint8Array) {
  const [file, build, ...options] = args
  if (!file || !build) throw new BadInput('file', 'Name a log and a build: log <log.csv> <build file or street, track, faulty>.')
  const sheet = await sheetFrom(build, shop, readText)
  const said: string[] = []
  let wanted: readonly [number, number] | undefined
  for (let i = 0; i < options.length; i += 2) {
    const value = options[i + 1]
    if (options[i] === '--map' && value !== undefined) said.push(value)
    else if (options[i] === '--pull' && value !== undefined) wanted = secondsOf(value)
    else throw new BadInput(options[i] ?? '', 'Options are --map "column=channel:unit", any number of times, and --pull from,to in seconds of the log.')
  }
  let bytes: Uint8Array
  try { bytes = readBytes(file) } catch { throw new BadInput('log', `${file} cannot be read.`) }
  const { log, rows, names, mapping } = logFrom(bytes, said, stoichiometricOf(sheet))
  const time = log.of.time!
  const found = pullsOf(log)
  const pull = wanted ? within(time, wanted) : found[0]
  if (!pull) throw new BadInput('pull', 'No stretch at full throttle with rising speed was found: give one with --pull from,to in seconds.')
  const told = ({ from, to }: Pull) => ({ from: time[from], to: time[to], lowest: log.of.speed![from], highest: log.of.speed![to] })
  try {
    const work = checkLog(sheet, log, pull)
    let step = work.next()
    while (!step.done) step = work.next()
    const { laid, ve, diagnosis } = step.value
    return {
      rows: { read: rows.count, bad: rows.bad.count, firstBad: rows.bad.first, outOfTime: log.outOfTime, cut: rows.cut },
      columns: Object.fromEntries(Object.entries(mapping).map(([column, m]) => [names[Number(column)]!, m])),
      pulls: found.map(told), pull: told(pull),
      laid: laid.map(({ channel, path, bands, off }) => ({ channel, value: path, unit: siUnit(channels[channel].quantity), settled: !slow.includes(channel), bands, off })),
      volumetricEfficiency: ve.ok ? { speeds: ve.speeds, sheet: ve.sheet, fitted: ve.fitted, error: ve.error, rows: ve.rows, curve: ve.curve } : { says: ve.says },
      fuel: ve.ok ? ve.fuel : null,
      pointsAt: diagnosis.pointed.map(({ suspect, sheet: was, log: now, error, alike }) => ({ field: suspect.path, says: suspect.says, sheet: was, log: now, error, settle: suspect.settle, alike: alike.map((a) => ({ field: a.suspect.path, sheet: a.sheet, log: a.log, settle: a.suspect.settle })) })),
      difference: { before: diagnosis.before, after: diagnosis.after, used: diagnosis.used, left: diagnosis.left },
    }
  } catch (error) { if (error instanceof NoAnswer) throw new BadInput(error.link, error.message); throw error }
}

function secondsOf(text: string): readonly [number, number] {
  const [from = NaN, to = NaN] = text.split(',').map(Number)
  if (!(to > from)) throw new BadInput('pull', 'A pull is two times in seconds of the log, from,to.')
  return [from, to]
}
function within(time: Float64Array, [from, to]: readonly [number, number]): Pull | undefined {
  const first = time.findIndex((t) => t >= from)
  const past = time.findIndex((t) => t > to)
  const last = past < 0 ? time.length - 1 : past - 1
  return first >= 0 && last > first ? { from: first, to: last } : undefined
}
