import { describe, expect, test } from 'vitest'
import { fieldValues } from '@trochoid/compute/build/fieldValues.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { circuits } from '@trochoid/compute/session/circuits.ts'
import { drive, startOf } from '@trochoid/compute/session/course.ts'
import { carFrom, drivenLap, timeBetween } from '@trochoid/compute/session/driven.ts'
import { coolDown, piecesOf } from '@trochoid/compute/session/piece.ts'
import { plantFrom } from '@trochoid/compute/session/plant.ts'
import { sessionOf } from '@trochoid/compute/session/session.ts'

const fields = fieldValues(builds.street)
const solved = solveBuild(builds.street)
const car = carFrom(fields, solved.points)

describe('a driven lap', () => {
  test.each(Object.values(circuits))('$name: every corner within its grip, load between nothing and all', (circuit) => {
    const lap = drivenLap(circuit, car)
    expect(lap.length).toBeCloseTo(circuit.segments.reduce((sum, s) => sum + s.length, 0), -1)
    for (const p of lap.pieces) { expect(p.load).toBeGreaterThanOrEqual(0); expect(p.load).toBeLessThanOrEqual(1); expect(p.speed).toBeLessThanOrEqual(car.top * 1.0001) }
    expect(lap.seconds).toBeGreaterThan(50)
  })
  test('more grip is quicker; a steady circle is driven at √(μ g R)', () => {
    expect(drivenLap(circuits.quarry, { ...car, grip: car.grip * 1.2 }).seconds).toBeLessThan(drivenLap(circuits.quarry, car).seconds)
    const circle = drivenLap({ name: 'circle', note: '', segments: [{ length: 400, radius: 60 }] }, car)
    expect(circle.length / circle.seconds).toBeCloseTo(Math.sqrt(car.grip * 9.80665 * 60), 3)
  })
  test('pieces keep time, way and turns', () => {
    const samples = Array.from({ length: 50 }, (_, i) => ({ seconds: 0.7, speed: 300 + 10 * i, carSpeed: 20 + i, load: (i % 3) / 2 }))
    const pieces = piecesOf(samples)
    const sum = (of: readonly (typeof samples)[number][], value: (p: (typeof samples)[number]) => number) => of.reduce((t, p) => t + value(p), 0)
    for (const value of [(p: (typeof samples)[number]) => p.seconds, (p: (typeof samples)[number]) => p.carSpeed * p.seconds, (p: (typeof samples)[number]) => p.load * p.speed * p.seconds]) expect(sum(pieces, value)).toBeCloseTo(sum(samples, value), 6)
  })
  test('time between speeds: a heavier car is slower, none for a speed it never reaches', () => {
    const here = timeBetween(car, 20, 50)!
    expect(timeBetween({ ...car, gears: car.gears.map((g) => ({ ...g, mass: g.mass * 1.1 })) }, 20, 50)!).toBeGreaterThan(here)
    expect(timeBetween(car, 20, 400)).toBeNull()
  })
})

describe('a session', () => {
  const plant = plantFrom(fields, solved)
  test('driven steadily at the judged speed for long, settles where the calculations settle', () => {
    // The point of greatest power at the share and car speed of the sheet: both calculations stand on that.
    const best = solved.points.reduce((a, p) => ((p.values['engine.power'] ?? 0) > (a.values['engine.power'] ?? 0) ? p : a))
    const share = fields.get('cooling.sustainedShare') as number
    const lap = { name: 'steady', seconds: 60, length: 0, pieces: [{ seconds: 60, speed: best.speed, carSpeed: fields.get('cooling.carSpeed') as number, load: share }] }
    const last = drive(plant, lap, 7200, startOf(plant, 'warm')).moments.at(-1)!
    // The charge cooler's heat goes with load twice here and once there: with none of it in front both are the same.
    const beside = fieldValues(setEntry(builds.street, 'cooling.core.coverage', { value: 0 }))
    const solvedBeside = solveBuild(setEntry(builds.street, 'cooling.core.coverage', { value: 0 }))
    const apart = plantFrom(beside, solvedBeside)
    const lastBeside = drive(apart, lap, 7200, startOf(apart, 'warm')).moments.at(-1)!
    expect(lastBeside.coolant).toBeCloseTo(solvedBeside.points[solved.points.indexOf(best)]!.values['cooling.coolantTemperature']!, 1)
    expect(last.coolant).toBeGreaterThan(lastBeside.coolant)
    // Oil properties are taken at 90 °C here and at the limit there.
    expect(Math.abs(last.bearings - best.values['oil.temperature']!)).toBeLessThan(1.5)
  })
  test('half an hour takes less than a tenth of a second, and its energy closes within a thousandth', () => {
    const lap = drivenLap(circuits.meadow, car)
    drive(plant, lap, 600, startOf(plant, 'warm'))
    const times = Array.from({ length: 3 }, () => { const t = performance.now(); drive(plant, lap, 1800, startOf(plant, 'warm')); return performance.now() - t })
    expect(Math.min(...times)).toBeLessThan(100)
    for (const start of ['cold', 'warm'] as const) expect(Math.abs(drive(plant, lap, 1800, startOf(plant, start)).energy.open)).toBeLessThan(1e-3)
  })
  test('another cooler helps what it cools, and more radiator never hurts', () => {
    const result = sessionOf(fields, solved, { lap: drivenLap(circuits.ridge, car), minutes: 20, start: 'warm' })
    const bought = Object.fromEntries(result.bought.map((b) => [b.id, b.summary]))
    expect(bought['radiator']!.coolant).toBeLessThan(result.summary.coolant)
    expect(bought['oilCooler']!.oil).toBeLessThan(result.summary.oil)
    expect(bought['beside']!.coolant).toBeLessThan(result.summary.coolant)
    expect(result.stop.coolant).toBeGreaterThanOrEqual(result.moments.at(-1)!.coolant)
  })
  test('a radiator far too small boils, the session ends there, and laps are counted', () => {
    const small = fieldValues(setEntry(builds.street, 'cooling.radiator.ratedHeat', { value: 25e3 }))
    const result = sessionOf(small, solved, { lap: drivenLap(circuits.meadow, car), minutes: 30, start: 'warm' })
    expect(result.summary.boils).not.toBeNull()
    expect(result.moments.at(-1)!.coolant).toBeLessThanOrEqual(result.limits.boiling + 0.01)
    expect(result.summary.laps).toBeLessThan(10)
    expect(result.stop.boiled).toBeGreaterThan(0)
  })
  test('cooling down is slower and keeps the way', () => {
    const lap = drivenLap(circuits.quarry, car)
    const slow = coolDown(lap)
    expect(slow.length).toBeCloseTo(lap.length, 3)
    expect(slow.seconds).toBeGreaterThan(lap.seconds)
  })
  test('without gears there is no lap, and it says so', () => {
    const none = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'].reduce((sheet, g) => setEntry(sheet, `driveline.gear.${g}`, { value: null }), builds.street)
    expect(() => carFrom(fieldValues(none), solved.points)).toThrow(NoAnswer)
  })
})
