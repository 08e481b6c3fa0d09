import { describe, expect, test } from 'vitest'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { fieldValues } from '@trochoid/compute/build/fieldValues.ts'
import { checkLog, stoichiometricOf, type LogCheck } from '@trochoid/compute/log/check.ts'
import { guessed, nameAndUnit, type Mapping } from '@trochoid/compute/log/channels.ts'
import { dialectOf, type Dialect } from '@trochoid/compute/log/dialect.ts'
import { exampleLog, planted, type Planted } from '@trochoid/compute/log/example.ts'
import { leastSquares } from '@trochoid/compute/log/leastSquares.ts'
import { logOf, type Log } from '@trochoid/compute/log/log.ts'
import { pullsOf } from '@trochoid/compute/log/pulls.ts'
import { rowsReader } from '@trochoid/compute/log/rows.ts'

const sheet = builds.street
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text)
function dialect(text: string): Dialect { const found = dialectOf(text.slice(0, 65536)); if (!found.ok) throw new Error(found.says); return found.dialect }
function readAll(text: string, piece = 1 << 20) {
  const d = dialect(text), reader = rowsReader(d), b = bytes(text)
  for (let i = 0; i < b.length; i += piece) reader.take(b.subarray(i, i + piece))
  return { d, rows: reader.done() }
}
function opened(text: string): Log {
  const { d, rows } = readAll(text)
  const read = logOf(rows, guessed(d.names, d.units), stoichiometricOf(sheet))
  if (!read.ok) throw new Error(read.says)
  return read.log
}
function checked(faults: Planted, noise = 1): LogCheck {
  const log = opened(exampleLog(sheet, { faults, noise }))
  const work = checkLog(sheet, log, pullsOf(log)[0]!)
  for (;;) { const step = work.next(); if (step.done) return step.value }
}

describe('how a file is written is found', () => {
  test.each([
    ['comma', 'Time (s),Engine speed (rpm),Lambda\n0.00,1500,0.95\n0.01,1510,0.95\n', ',', false],
    ['semicolon with decimal commas', 'Time;Engine speed;Lambda\ns;rpm;-\n0,00;1500;0,95\n0,01;1510;0,95\n', ';', true],
    ['tab', 'Time\tEngine speed\tLambda\n0\t1500\t0.95\n1\t1510\t0.9\n', '\t', false],
    ['bar, with lines of other things above', 'Logged on a cold morning\n\nTime|Engine speed|Lambda\n0|1500|0.95\n1|1510|0.9\n2|1520|0.9\n', '|', false],
  ])('%s', (_, text, separator, decimalComma) => {
    const { d, rows } = readAll(text)
    expect(d).toMatchObject({ separator, decimalComma })
    expect(d.names[1]).toMatch(/^Engine speed/)
    expect(rows.columns[1]![0]).toBe(1500)
    expect(rows.columns[2]![0]).toBeCloseTo(0.95, 12)
    expect(rows.bad.count).toBe(0)
  })
  test('what is no log is refused in words', () => {
    for (const text of ['', 'hello', 'a,b,c\nx,y,z\n', '\u0000\u0001\u0002']) expect(dialectOf(text).ok).toBe(false)
    expect(dialectOf('1,2\n3,4\n')).toMatchObject({ ok: false, says: expect.stringContaining('no names') as string })
  })
  test('units stand in brackets, after a comma or in a row of their own', () => {
    expect(nameAndUnit('Oil pressure (bar)')).toEqual({ name: 'Oil pressure', unit: 'bar' })
    expect(nameAndUnit('T_coolant [°C]')).toEqual({ name: 'T_coolant', unit: '°C' })
    expect(nameAndUnit('Speed, km/h')).toEqual({ name: 'Speed', unit: 'km/h' })
    const meant = guessed(['Time', 'RPM', 'Boost', 'MAP', 'Coolant temp', 'AFR', 'Vehicle speed', 'Oil temp'], ['ms', '1/min', 'psi', 'kPa', '°F', '', 'mph', 'F'])
    expect(Object.values(meant).map((m) => `${m.channel} ${m.unit}`)).toEqual(['time ms', 'speed rpm', 'boost psi gauge', 'manifold kPa abs', 'coolant °F', 'ratio 1', 'carSpeed mph', 'oil °F'])
  })
})

describe('rows are read as they come', () => {
  const head = 'Time (s),RPM,Lambda\n'
  test('in pieces of any size, the numbers are the same', () => {
    const text = exampleLog(sheet, { about: 1 })
    const whole = readAll(text).rows
    for (const piece of [1, 7, 1000]) {
      const parts = readAll(text, piece).rows
      expect(parts.count).toBe(whole.count)
      for (const [k, column] of parts.columns.entries()) expect(column).toEqual(whole.columns[k])
    }
  })
  test('numbers in every form', () => {
    const { rows } = readAll(`${head}0.5,-1.25e2, +7 \n"1.5","2E-3",\r\n1:02.5,3,.5`)
    expect([...rows.columns[0]!]).toEqual([0.5, 1.5, 62.5])
    expect(rows.columns[1]![0]).toBeCloseTo(-125, 10)
    expect(rows.columns[1]![1]).toBeCloseTo(0.002, 12)
    expect([...rows.columns[2]!]).toEqual([7, NaN, 0.5])
  })
  test('bad rows are left out, counted, and the first of them told', () => {
    const { rows } = readAll(`${head}0,1500,1\n1,1600\n2,1700,1,9\n3,broken,1\n4,1800,1\n`)
    expect(rows.count).toBe(2)
    expect(rows.bad.count).toBe(3)
    expect(rows.bad.first.map((b) => b.line)).toEqual([3, 4, 5])
    expect(rows.bad.first[2]!.says).toContain('RPM')
  })
  test('a column of text is no fault', () => {
    const { rows } = readAll('Time (s),RPM,Remark\n0,1500,start\n1,1600,on\n2,1700,on\n')
    expect(rows).toMatchObject({ count: 3, bad: { count: 0 } })
  })
  test('time that stands or runs back is left out and counted', () => {
    const { d, rows } = readAll(`${head}${Array.from({ length: 30 }, (_, i) => `${i === 10 ? 3 : i},${1500 + i},1`).join('\n')}\n`)
    const log = logOf(rows, guessed(d.names, d.units), 14.5)
    expect(log).toMatchObject({ ok: true, log: { count: 29, outOfTime: 1 } })
  })
  test('without time or speed it asks for them', () => {
    const { rows } = readAll(`${head}0,1,1\n1,2,1\n`)
    expect(logOf(rows, {} as Mapping, 14.5)).toMatchObject({ ok: false, says: expect.stringContaining('time') as string })
  })
  test('200,000 rows are read, and their pulls found, in less than two seconds', () => {
    const part = exampleLog(sheet, { about: 30, rate: 50 })
    const lines = part.split('\r\n')
    const body = lines.slice(1)
    const many: string[] = [lines[0]!]
    for (let k = 0; many.length < 200_001; k++) for (const line of body) { const cut = line.indexOf(','); many.push(`${(Number(line.slice(0, cut)) + k * 200).toFixed(3)}${line.slice(cut)}`) }
    const text = many.slice(0, 200_001).join('\n')
    const b = bytes(text)
    const began = performance.now()
    const d = dialect(text), reader = rowsReader(d)
    for (let i = 0; i < b.length; i += 1 << 20) reader.take(b.subarray(i, i + (1 << 20)))
    const rows = reader.done()
    const read = logOf(rows, guessed(d.names, d.units), 14.5)
    const pulls = read.ok ? pullsOf(read.log) : []
    expect(performance.now() - began).toBeLessThan(2000)
    expect(rows.count).toBe(200_000)
    expect(pulls.length).toBeGreaterThan(50)
  })
})

describe('pulls', () => {
  const log = opened(exampleLog(sheet))
  test('the three of the example are found, the widest first', () => {
    const pulls = pullsOf(log)
    expect(pulls.length).toBe(3)
    const { of } = log
    for (const { from, to } of pulls) { expect(of.throttle![from]).toBeGreaterThan(0.9); expect(of.speed![to]!).toBeGreaterThan(of.speed![from]! * 3) }
    const width = pulls.map(({ from, to }) => of.speed![to]! - of.speed![from]!)
    expect(width[0]).toBeGreaterThanOrEqual(width[1]!)
  })
  test('without throttle, manifold pressure tells', () => {
    const { throttle: _, ...of } = log.of
    expect(pullsOf({ ...log, of }).length).toBe(3)
  })
  test('a log without one has none', () => {
    expect(pullsOf({ ...log, of: { ...log.of, throttle: log.of.throttle!.map(() => 0.3) } })).toEqual([])
  })
})

describe('what a log says of its sheet', () => {
  test('two faults that were planted are found within two in a hundred, and no third', () => {
    const { diagnosis } = checked(planted)
    expect(diagnosis.pointed.map((p) => p.suspect.path).sort()).toEqual(Object.keys(planted).sort())
    for (const { suspect, sheet: was, log, error, alike } of diagnosis.pointed) {
      expect(Math.abs(log / was - planted[suspect.path]!), suspect.path).toBeLessThan(0.02)
      expect(Math.abs(log / was - planted[suspect.path]!), suspect.path).toBeLessThan(3 * (error / was))
      expect(alike).toEqual([])
    }
    expect(diagnosis.after).toBeLessThan(diagnosis.before / 10)
  })
  test('three times the scatter, still found within four', () => {
    const { diagnosis } = checked(planted, 3)
    for (const [path, factor] of Object.entries(planted)) {
      const found = diagnosis.pointed.find((p) => p.suspect.path === path)!
      expect(Math.abs(found.log / found.sheet - factor), path).toBeLessThan(0.04)
    }
  })
  test('a log of the sheet itself points at nothing', () => {
    const { diagnosis, laid, ve } = checked({})
    expect(diagnosis.pointed).toEqual([])
    for (const { channel, off } of laid) if (!['coolant', 'oil'].includes(channel)) expect(Math.abs(off!.ratio - 1), channel).toBeLessThan(0.01)
    expect(ve.ok && Math.abs(ve.fuel.ratio - 1)).toBeLessThan(0.01)
  })
  test('injectors that flow less look like air that is more: both are named, with what each would need', () => {
    const { diagnosis } = checked({ 'fuel.secondary.ratedFlow': 0.88 })
    const [lead] = diagnosis.pointed
    const named = [{ suspect: lead!.suspect, sheet: lead!.sheet, log: lead!.log }, ...lead!.alike]
    const secondary = named.find((p) => p.suspect.path === 'fuel.secondary.ratedFlow')!
    expect(Math.abs(secondary.log / secondary.sheet - 0.88)).toBeLessThan(0.025)
  })
  test('volumetric efficiency is fitted within its stated uncertainty and one in a hundred', () => {
    const { ve } = checked({ 'engine.veCurve': 0.93 })
    if (!ve.ok) throw new Error(ve.says)
    const inside = ve.fitted.map((y, i) => ({ y, i })).filter((p) => p.y !== null)
    expect(inside.length).toBeGreaterThanOrEqual(3)
    for (const { y, i } of inside) expect(Math.abs(y! / ve.sheet[i]! - 0.93), String(i)).toBeLessThan(0.012 + 3 * (ve.error[i]! / ve.sheet[i]!))
    expect(ve.curve.x).toEqual((fieldValues(sheet).get('engine.veCurve') as { x: number[] }).x)
    expect(Math.abs(ve.fuel.ratio - 0.93)).toBeLessThan(0.02)
  })
})

test('least squares is exact on a line, and its covariance is that of the textbook', () => {
  const x = [0, 1, 2, 3, 4]
  const fit = leastSquares(x.map((v) => [1, v]), x.map((v) => 2 + 3 * v), 2)!
  expect(fit.x[0]).toBeCloseTo(2, 10)
  expect(fit.x[1]).toBeCloseTo(3, 10)
  // Var of the slope is 1/Σ(x − mean)²; of the intercept Σx²/(nΣ(x − mean)²).
  expect(fit.covariance[1]![1]).toBeCloseTo(1 / 10, 10)
  expect(fit.covariance[0]![0]).toBeCloseTo(30 / 50, 10)
  expect(leastSquares([[1, 1], [2, 2]], [1, 2], 2)).toBeNull()
})
