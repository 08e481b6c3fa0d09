import { describe, expect, test } from 'vitest'
import { run } from '@trochoid/compute/calculation/calculation.ts'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { valueAt } from '@trochoid/compute/build/sheet.ts'
import { type Point } from '@trochoid/compute/build/point.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

const registry = await loadRegistry()
const rpm = (n: number) => (n * Math.PI) / 30
const at = (sheet: Sheet, n: number): Point => solveBuild(sheet, [2000, 2500, 3000, 3500, 4000, 5000, 6000, 7000, 7500].map(rpm)).points.find((p) => Math.abs(p.speed - rpm(n)) < 1e-6)!
const set = (path: string, value: unknown) => setEntry(builds.street, path, { value })
const v = (p: Point, path: string): number => { const x = p.values[path]; if (x === undefined) throw new Error(`${path}: ${JSON.stringify(p.failed[path] ?? p.missing[path])}`); return x }

describe.each(Object.entries(builds))('the %s build', (_, sheet) => {
  const solved = solveBuild(sheet)
  test('closes mass and energy within 0.1 % in both control volumes at every solved point', () => {
    let n = 0
    for (const p of solved.points) if (p.values['engine.power'] !== undefined) {
      n++
      for (const name of ['massEngine', 'massTurbine', 'energyEngine', 'energyCar', 'turboShaft']) expect(Math.abs(p.residuals[name]!), `${name} at ${p.speed}`).toBeLessThan(1e-3)
    }
    expect(n).toBeGreaterThan(20)
  })
  test('gives each point and idle finite numbers only', () => {
    for (const p of [solved.idle, ...solved.points]) for (const [path, x] of Object.entries(p.values)) expect(Number.isFinite(x), `${path} at ${p.speed}`).toBe(true)
  })
  test('feeds each calculation numbers that give the same answer again', () => {
    for (const p of [solved.idle, ...solved.points]) for (const c of registry.calculations.values()) {
      if (!Object.values(c.out).some((out) => 'origin' in out)) continue
      const outputs = Object.entries(c.out).filter(([, out]) => 'origin' in out && p.values[out.path] !== undefined)
      if (outputs.length === 0) continue
      const given = Object.fromEntries(Object.entries(c.in).map(([name, input]) => [name, input.origin === 'field' ? valueAt(sheet, input) : input.origin === 'point' ? p.values[input.path] ?? null : null]))
      const again = run(c, given).outputs
      for (const [name, out] of outputs) expect(again[name], `${c.id}.${name} at ${p.speed}`).toBe(p.values['origin' in out ? out.path : ''])
    }
  })
})

describe('one number changed', () => {
  const base = at(builds.street, 7000)
  const changed = (path: string, value: unknown) => at(set(path, value), 7000)
  test('thinner air gives less power and a faster compressor at the same boost', () => {
    const high = changed('site.airPressure', 75000)
    expect(v(high, 'engine.power')).toBeLessThan(v(base, 'engine.power'))
    expect(v(high, 'boost.pressureRatio')).toBeGreaterThan(v(base, 'boost.pressureRatio'))
    expect(v(high, 'boost.compressorSpeed')).toBeGreaterThan(v(base, 'boost.compressorSpeed'))
  })
  test('hotter air gives a hotter charge and less air', () => {
    const hot = changed('site.airTemperature', 313.15)
    expect(v(hot, 'engine.chargeTemperature')).toBeGreaterThan(v(base, 'engine.chargeTemperature') + 10)
    expect(v(hot, 'engine.airFlow')).toBeLessThan(v(base, 'engine.airFlow'))
  })
  test('a larger turbine lowers back-pressure and raises the threshold', () => {
    const sheet = set('boost.turbineCapacity', 0.32)
    const big = at(sheet, 7000)
    expect(v(big, 'boost.turbineInletPressure')).toBeLessThan(v(base, 'boost.turbineInletPressure'))
    expect(solveBuild(sheet).build['boost.thresholdSpeed']!).toBeGreaterThan(solveBuild(builds.street).build['boost.thresholdSpeed']!)
  })
  test('twice the rotors’ volume at one boost takes near twice the air until the compressor says no', () => {
    const half = at(setEntry(set('engine.describedBy', 'displacement'), 'engine.displacement', { value: 300e-6 }), 7000)
    const ratio = v(base, 'engine.airFlow') / v(half, 'engine.airFlow')
    expect(ratio).toBeGreaterThan(1.8)
    expect(ratio).toBeLessThan(2.35)
  })
  test('more boost asks a pressure ratio that follows from outside pressure and losses', () => {
    for (const p of [base, changed('boost.target', { x: [rpm(1000), rpm(9000)], y: [60000, 60000] })]) {
      expect(v(p, 'boost.pressureRatio')).toBeCloseTo(v(p, 'boost.compressorOutletPressure') / v(p, 'boost.compressorInletPressure'), 12)
      expect(v(p, 'boost.compressorOutletPressure')).toBeGreaterThan(v(p, 'engine.manifoldPressure'))
    }
  })
  test('below its threshold the wastegate is shut and all exhaust goes through the turbine', () => {
    const slow = at(builds.street, 2500)
    expect(v(slow, 'boost.wastegateFlow')).toBeLessThan(1e-6 * v(slow, 'boost.exhaustFlow'))
    expect(v(slow, 'boost.boost')).toBeLessThan(v(base, 'boost.boost'))
  })
})

test('speeds alone and in any company give the same point', () => {
  const alone = solveBuild(builds.street, [rpm(6000)]).points[0]!
  expect(v(alone, 'engine.power')).toBeCloseTo(v(at(builds.street, 6000), 'engine.power'), 3)
})
test('a sheet without a compressor map has no point and says what it waits for', () => {
  const solved = solveBuild(set('boost.compressorMap', null), [rpm(6000)])
  expect(solved.points[0]!.values['engine.power']).toBeUndefined()
  expect(solved.points[0]!.missing['engine.power']).toContain('boost.compressorMap')
})
