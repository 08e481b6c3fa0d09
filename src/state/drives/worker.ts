import { fieldValues } from '@trochoid/compute/build/fieldValues.ts'
import type { Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { guessed, signature, type Mapping } from '@trochoid/compute/log/channels.ts'
import { checkLog, stoichiometricOf } from '@trochoid/compute/log/check.ts'
import { manifoldOf } from '@trochoid/compute/log/compare.ts'
import { dialectOf, type Dialect } from '@trochoid/compute/log/dialect.ts'
import { exampleLog } from '@trochoid/compute/log/example.ts'
import { logOf, type Log } from '@trochoid/compute/log/log.ts'
import { pullsOf } from '@trochoid/compute/log/pulls.ts'
import { rowsReader, type Rows } from '@trochoid/compute/log/rows.ts'
import { circuits } from '@trochoid/compute/session/circuits.ts'
import { carFrom, drivenLap, timeBetween } from '@trochoid/compute/session/driven.ts'
import { lapFromLog } from '@trochoid/compute/session/fromLog.ts'
import { session } from '@trochoid/compute/session/session.ts'
import { thinned } from './thinned.ts'
import type { Opened, Task, Told } from './tasks.ts'

/** Sessions and logs, in a thread of their own. A file is read here piece by piece and stays here: the page gets what it draws. */
const tell = (told: Told): void => postMessage(told)
const largest = 50_000_000
const headBytes = 65_536

type Read = { readonly name: string; readonly invented: boolean; readonly dialect: Dialect; readonly rows: Rows }
let read: Read | null = null
let log: Log | null = null
/** What the columns were last taken for, and the air that the fuel needs: lambda of a log that tells air over fuel rests on it. */
let meant: Mapping = {}
let air = NaN

addEventListener('message', ({ data }: MessageEvent<Task>) => {
  void obey(data).catch((error: unknown) => tell({ kind: 'failed', says: error instanceof Error ? error.message : String(error) }))
})

async function obey(task: Task): Promise<void> {
  if (task.kind === 'session') return drive(task)
  if (task.kind === 'drive') {
    const { dialect, rows } = await readFile(task.file)
    const found = logOf(rows, guessed(dialect.names, dialect.units), stoichiometricOf(task.sheet))
    if (!found.ok) throw new Error(found.says)
    const made = lapFromLog(found.log, task.file.name)
    if (!made.ok) throw new Error(made.says)
    return tell({ kind: 'drive', lap: made.lap, bad: rows.bad.count })
  }
  if (task.kind === 'open') {
    read = await readFile(task.file ?? new File([exampleLog(task.sheet)], 'Invented log'), task.file === null)
    const { names, units } = read.dialect
    return opened(task.known[signature(names, units)] ?? guessed(names, units), task.sheet)
  }
  if (task.kind === 'map') return opened(task.mapping, task.sheet)
  check(task)
}

function drive({ sheet, over, minutes, start }: Extract<Task, { kind: 'session' }>): void {
  const fields = fieldValues(sheet)
  const solved = solveBuild(sheet)
  const car = carFrom(fields, solved.points)
  const lap = typeof over === 'string' ? drivenLap(circuits[over], car) : over
  const work = session(fields, solved, { lap, minutes, start })
  for (;;) {
    const step = work.next()
    if (step.done) return tell({ kind: 'session', result: step.value, from100to200: timeBetween(car, 100 / 3.6, 200 / 3.6) })
    tell({ kind: 'progress', part: step.value })
  }
}

async function readFile(file: File, invented = false): Promise<Read> {
  if (file.size > largest) throw new Error(`${file.name} is ${Math.round(file.size / 1e6)} MB; up to ${largest / 1e6} MB are read. Cut it to the drive that matters.`)
  const found = dialectOf(new TextDecoder().decode(await file.slice(0, headBytes).arrayBuffer()))
  if (!found.ok) throw new Error(found.says)
  const reader = rowsReader(found.dialect)
  let done = 0
  const stream = file.stream().getReader()
  for (;;) {
    const { value, done: over } = await stream.read()
    if (over) break
    reader.take(value)
    done += value.length
    tell({ kind: 'progress', part: done / Math.max(1, file.size) })
  }
  return { name: file.name, invented, dialect: found.dialect, rows: reader.done() }
}

function opened(mapping: Mapping, sheet: Sheet): void {
  if (!read) throw new Error('There is no log open.')
  const { name, invented, dialect: { names, units }, rows } = read
  meant = mapping
  air = stoichiometricOf(sheet)
  const found = logOf(rows, mapping, air)
  log = found.ok ? found.log : null
  const time = log?.of.time
  const pressure = log && manifoldOf(log.of, fieldValues(sheet).get('site.airPressure') as number)
  const tellOf = (of: Log): Opened['pulls'] => pullsOf(of).slice(0, 12).map(({ from, to }) => ({ from: of.of.time![from]!, to: of.of.time![to]!, low: of.of.speed![from]!, high: of.of.speed![to]! }))
  tell({
    kind: 'opened', opened: {
      name, invented, names, units, signature: signature(names, units), mapping, rows: rows.count, bad: rows.bad, cut: rows.cut, fault: found.ok ? null : found.says,
      outOfTime: log?.outOfTime ?? 0, seconds: time ? time.at(-1)! : 0, trace: time ? thinned(time, log!.of.speed!, pressure) : { t: [], speed: [], manifold: [] }, pulls: log ? tellOf(log) : [],
    },
  })
}

function check({ sheet, from, to }: Extract<Task, { kind: 'check' }>): void {
  if (read && stoichiometricOf(sheet) !== air) {
    air = stoichiometricOf(sheet)
    const found = logOf(read.rows, meant, air)
    log = found.ok ? found.log : null
  }
  if (!log) throw new Error('There is no log open.')
  const time = log.of.time!
  const first = time.findIndex((t) => t >= from - 1e-9)
  const past = time.findIndex((t) => t > to + 1e-9)
  const work = checkLog(sheet, log, { from: Math.max(0, first), to: past < 0 ? log.count - 1 : past - 1 })
  for (;;) {
    const step = work.next()
    if (step.done) return tell({ kind: 'check', check: step.value, from, to })
    tell({ kind: 'progress', part: step.value })
  }
}
