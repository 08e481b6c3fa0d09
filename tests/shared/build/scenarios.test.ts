import { describe, expect, test } from 'vitest'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { type Point } from '@trochoid/compute/build/point.ts'
import { setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { standardAtmosphere } from '@trochoid/compute/media/standardAtmosphere.ts'

const rpm = Math.PI / 30
const with_ = (sheet: Sheet, said: Readonly<Record<string, unknown>>): Sheet => Object.entries(said).reduce((s, [path, value]) => setEntry(s, path, { value }), sheet)
const speeds = [2000, 3000, 3500, 4500, 6000, 7000, 8000].map((n) => n * rpm)
const points = (said: Readonly<Record<string, unknown>>, sheet: Sheet = builds.street): readonly Point[] => solveBuild(with_(sheet, said), speeds).points
const at = (list: readonly Point[], n: number) => (path: string): number => list.find((p) => Math.abs(p.speed - n * rpm) < 1e-6)!.values[path]!
const closes = (list: readonly Point[]): void => {
  for (const p of list) if (p.values['engine.power'] !== undefined) for (const name of ['massEngine', 'massTurbine', 'energyEngine', 'energyCar', 'turboShaft']) expect(Math.abs(p.residuals[name]!), `${name} at ${p.speed}`).toBeLessThan(1e-3)
}

describe('high in the mountains on a hot day', () => {
  const { pressure } = standardAtmosphere({ altitude: 2500 })
  const there = { 'site.airPressure': pressure, 'site.airTemperature': 313.15 }
  /** Margins at the boost the gauge always had: each of these has less left there. */
  const worse = ['choke', 'compressor-overspeed', 'charge-temperature', 'boost-by-wanted-speed', 'coolant-temperature', 'oil-temperature', 'boil-margin', 'vapour-hot-stop', 'exhaust-temperature']
  /** Less air and a lower absolute pressure spare these. */
  const better = ['manifold-sensor-range', 'clutch-torque', 'gearbox-torque', 'fuel-pump-flow', 'wastegate-passes', 'injector-closing-window']
  const left = (sheet: Sheet) => new Map(weighMargins(margins, solveBuild(sheet), sheet).map((w) => [w.id, w]))
  test.each(['street', 'track'] as const)('every margin of the %s build moves the way it should', (name) => {
    const [low, high] = [left(builds[name]), left(with_(builds[name], there))]
    const moved = (id: string): number | null => { const [a, b] = [low.get(id)!, high.get(id)!]; return b.failed !== null || b.state === 'short' && a.state !== 'short' ? -1 : a.left === null || b.left === null ? null : b.left - a.left }
    for (const id of worse) { const by = moved(id); if (by !== null) expect(by, id).toBeLessThan(0) }
    for (const id of better) { const by = moved(id); if (by !== null) expect(by, id).toBeGreaterThan(0) }
  })
  test('the compressor turns faster at a higher ratio, the charge is hotter and there is less power for the same boost', () => {
    const [here, up] = [at(points({}), 6000), at(points(there), 6000)]
    expect(up('boost.boost')).toBeCloseTo(here('boost.boost'), -2)
    // 1 bar on 74.7 kPa is a ratio of 2.34 before losses, on 101.3 kPa one of 1.99.
    expect(up('boost.pressureRatio') / here('boost.pressureRatio')).toBeGreaterThan(1.15)
    expect(up('boost.compressorSpeed') / here('boost.compressorSpeed')).toBeGreaterThan(1.08)
    expect(up('engine.chargeTemperature') - here('engine.chargeTemperature')).toBeGreaterThan(15)
    expect(up('engine.power') / here('engine.power')).toBeLessThan(0.9)
    expect(up('engine.power') / here('engine.power')).toBeGreaterThan(0.7)
    // At the same shaft speed surge is nearer; that boost comes later can still move its worst point away from it.
    for (const path of ['boost.surgeMargin', 'boost.chokeMargin']) expect(up(path), path).toBeLessThan(here(path))
    closes(points(there))
  })
})

describe('a wastegate too small', () => {
  const small = points({ 'boost.wastegate.diameter': 0.02 })
  test('lets boost creep above its target at the top, with all of its flow used and every balance closed', () => {
    expect(small.map((p) => p.setBy)).toContain('wide open')
    for (const p of small.filter((q) => q.setBy === 'wide open')) {
      expect(p.values['boost.boost']!).toBeGreaterThan(p.values['boost.asked']! + 1000)
      // Wide open, more goes past it than it passed at the boost asked, and still less than was asked.
      expect(p.values['boost.wastegateFlow']!).toBeGreaterThan(p.values['boost.wastegateCapacity']!)
      expect(p.values['boost.wastegateCapacity']!).toBeLessThan(p.values['boost.wastegateAsked']!)
    }
    closes(small)
  })
  test('creeps more the smaller it is, and not at all once it passes what is asked', () => {
    const top = (diameter: number): number => at(points({ 'boost.wastegate.diameter': diameter }), 7000)('boost.boost')
    expect(top(0.018)).toBeGreaterThan(top(0.02))
    expect(top(0.02)).toBeGreaterThan(top(0.022))
    expect(top(0.03)).toBeCloseTo(top(0.05), 0)
  })
})

describe('an actuator', () => {
  test('too weak cracks early: boost stays below target where exhaust pressure is high, never above', () => {
    const weak = points({ 'boost.actuator.controlShare': 0.1 })
    const street = points({})
    expect(weak.map((p) => p.setBy)).toContain('cracked')
    weak.forEach((p, i) => expect(p.values['boost.boost']!).toBeLessThanOrEqual(street[i]!.values['boost.boost']! + 1))
    closes(weak)
  })
  test('too stiff holds the valve shut too long: boost above target, most where least has to open it', () => {
    const stiff = points({ 'boost.actuator.firstMovement': 1.5e5, 'boost.actuator.fullTravel': 1.8e5 })
    expect(stiff.map((p) => p.setBy)).toContain('stiff')
    for (const p of stiff.filter((q) => q.setBy === 'stiff')) expect(p.values['boost.boost']!).toBeGreaterThan(p.values['boost.asked']!)
    closes(stiff)
  })
  test('whose bench pressures are not known follows the target', () => {
    const unknown = points({ 'boost.actuator.firstMovement': null, 'boost.actuator.controlShare': 0.01 })
    for (const p of unknown) expect(['target', 'shut']).toContain(p.setBy)
  })
})

describe('a throttle that is not fully open', () => {
  test('makes less air, down to vacuum, and boost stands before it instead of behind it', () => {
    const list = [1, 0.5, 0.3, 0.2, 0.12].map((position) => points({ 'engine.throttle.position': position }))
    for (const n of [3000, 6000, 8000]) {
      const air = list.map((l) => at(l, n)('engine.airFlow'))
      air.slice(1).forEach((a, i) => expect(a).toBeLessThan(air[i]!))
    }
    for (const p of list[2]!) {
      expect(p.values['engine.throttleInletPressure']!).toBeGreaterThan(p.values['engine.manifoldPressure']!)
      expect(p.values['engine.throttleInletPressure']! - 101325).toBeLessThanOrEqual(p.values['boost.asked']! + 1)
    }
    expect(at(list[4]!, 7000)('engine.manifoldPressure')).toBeLessThan(60e3)
    list.forEach(closes)
  })
  test('nearly open is nearly what fully open is', () => {
    const [open, nearly] = [at(points({}), 7000), at(points({ 'engine.throttle.position': 0.999 }), 7000)]
    expect(nearly('engine.airFlow') / open('engine.airFlow')).toBeCloseTo(1, 2)
  })
})

describe('two turbochargers side by side', () => {
  test('of half the size each make what one of the whole size makes', () => {
    const map = builds.track.entries['boost.compressorMap']!.value as { lines: { flow: number[] }[] }
    const half = { ...map, lines: map.lines.map((line) => ({ ...line, flow: line.flow.map((m) => m / 2) })) }
    const one = points({}, builds.track)
    const two = points({ 'boost.turbos': 2, 'boost.compressorMap': half, 'boost.turbineCapacity': 0.15 }, builds.track)
    one.forEach((p, i) => {
      const q = two[i]!
      for (const path of ['engine.power', 'boost.boost', 'boost.turbineInletPressure', 'boost.compressorPower', 'boost.compressorSpeed']) expect(q.values[path]! / p.values[path]!, path).toBeCloseTo(1, 6)
      expect(q.values['boost.correctedFlow']! / p.values['boost.correctedFlow']!).toBeCloseTo(0.5, 6)
    })
    closes(two)
  })
})

describe('the charge cooler in front of the radiator', () => {
  const rated = { 'boost.coolerRatedAir': 1.5 }
  test('cools less in less air: slower, or with half of the face', () => {
    const charge = (said: Readonly<Record<string, unknown>>): number => at(points({ ...rated, ...said }), 7000)('engine.chargeTemperature')
    const base = charge({})
    expect(charge({ 'cooling.carSpeed': 50 / 3.6 })).toBeGreaterThan(base + 0.5)
    expect(charge({ 'cooling.core.coverage': 0.4 })).toBeGreaterThan(base + 0.5)
    closes(points(rated))
  })
  test('warms the air that the radiator behind it gets', () => {
    const list = points(rated)
    for (const p of list) if (p.values['cooling.chargeCoolerHeat']! > 1000) expect(p.values['cooling.coreAirTemperature']!).toBeGreaterThan(298.15)
  })
})
