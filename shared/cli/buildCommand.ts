import { allFields, margins as allMargins } from '../build/everything.ts'
import { cureSentence, remediesFor, wantsCure } from '../build/remedies.ts'
import { stateWord, sentence, weighMargins } from '../build/margins.ts'
import { balances } from '../build/pointValues.ts'
import { setEntry, type Sheet } from '../build/sheet.ts'
import { solveBuild } from '../build/solve.ts'
import { readValue } from '../calculation/inputs.ts'
import { readArithmetic } from '../quantity/arithmetic.ts'
import { BadInput } from './badInput.ts'
import { sheetFrom } from './sheetFrom.ts'
import { type Workshop } from './workshop.ts'

/** Solves a build file, the build of a link, or an invented one by name (`street`, `track`, `faulty`): idle, sweep, residuals, margins, remedies. */
export async function buildCommand(shop: Workshop, args: readonly string[], readFile: (path: string) => string) {
  const [file, ...options] = args
  if (!file) throw new BadInput('file', 'Name a build file, or give the address of a build.')
  let sheet = await sheetFrom(file, shop, readFile)
  let speeds: number[] | undefined
  for (let i = 0; i < options.length; i += 2) {
    const value = options[i + 1]
    if (options[i] === '--set' && value !== undefined) sheet = setField(sheet, value, shop)
    else if (options[i] === '--speeds' && value !== undefined) speeds = readSpeeds(value)
    else throw new BadInput(options[i] ?? '', 'Options are --set path=value, any number of times, and --speeds 3000,5000 in rpm.')
  }
  const solved = solveBuild(sheet, speeds)
  const weigh = (s: Sheet) => weighMargins(allMargins, solveBuild(s, speeds), s)
  const weighed = weighMargins(allMargins, solved, sheet)
  const name = (path: string): string => { const f = shop.fields.get(path); return f?.label ?? f?.shape.name ?? path }
  const remedies = weighed.filter(wantsCure).flatMap((w) => [...remediesFor(w.margin, sheet, weigh)].map((cure) => ({
    margin: cure.margin, field: cure.field, from: cure.from, to: cure.value, state: cure.state, pushes: cure.pushes, says: cureSentence(cure, shop.fields.get(cure.field) ?? allFields.get(cure.field)!),
  })))
  return {
    name: sheet.name, idle: solved.idle, sweep: solved.points, build: solved.build,
    residuals: largest(solved.points.map((p) => p.residuals)), balances, remainder: 'cooling.exhaustHeat',
    margins: weighed.map((w) => ({
      id: w.id, title: w.margin.title, theme: w.margin.theme, state: w.state, word: stateWord(w), demand: w.demand, capacity: w.capacity, left: w.left, band: w.band,
      as: w.margin.as, tight: w.tight, speed: w.speed, missing: w.missing, failed: w.failed, gaps: w.gaps, from: w.from, article: w.margin.article, says: sentence(w, 'metric', name),
    })),
    remedies,
  }
}

export function setField(sheet: Sheet, text: string, shop: Workshop): Sheet {
  const cut = text.indexOf('=')
  const path = text.slice(0, cut)
  const raw = text.slice(cut + 1)
  const field = shop.fields.get(path)
  if (cut < 1 || !field) throw new BadInput(path || 'set', 'The build sheet has no such field.')
  if (raw === 'null') return setEntry(sheet, path, { ...sheet.entries[path], value: null })
  const plain = field.shape.kind === 'curve' || field.shape.kind === 'map' ? parsed(raw, path) : /^-?\d+(\.\d+)?(e-?\d+)?$/i.test(raw) && field.shape.kind !== 'grade' ? Number(raw) : raw
  const read = readValue(plain, field.shape, readArithmetic)
  if (!read.ok) throw new BadInput(path, read.says)
  const next = setEntry(sheet, path, { ...sheet.entries[path], value: read.value })
  if (read.at === undefined) return next
  if (!field.at) throw new BadInput(path, `Leave out “at ${read.at}”.`)
  return setField(next, `${field.at}=${read.at}`, shop)
}
function parsed(raw: string, path: string): unknown {
  try { return JSON.parse(raw) } catch { throw new BadInput(path, 'A curve or map is given as JSON.') }
}
function readSpeeds(text: string): number[] {
  const speeds = text.split(',').map(Number)
  if (speeds.length > 400 || speeds.some((n) => !(n > 0 && n < 20000))) throw new BadInput('speeds', 'Speeds are in rpm, between commas.')
  return speeds.map((n) => (n * Math.PI) / 30)
}
function largest(all: readonly Readonly<Record<string, number>>[]): Record<string, number> {
  const most: Record<string, number> = {}
  for (const one of all) for (const [name, value] of Object.entries(one)) most[name] = Math.max(most[name] ?? 0, Math.abs(value))
  return most
}
