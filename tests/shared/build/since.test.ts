import { describe, expect, test } from 'vitest'
import { corrections, edition, type Correction } from '@trochoid/compute/build/corrections.ts'
import { margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { beforeOf, since } from '@trochoid/compute/build/since.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'

const weighed = weighMargins(margins, solveBuild(street), street)
const pump = weighed.find((w) => w.id === 'fuel-pump-flow')!
const made: Correction = { edition: 3, date: '2026-01-01', says: 'The pump was given the flow of another pressure.', margins: ['fuel-pump-flow'] }
const before = (change: Partial<{ state: 'short'; left: number | null }>) => {
  const kept = beforeOf(2, weighed)
  return { ...kept, margins: { ...kept.margins, [pump.id]: { ...kept.margins[pump.id]!, ...change } } }
}

describe('a build that was weighed under earlier formulas', () => {
  test('tells which margin moved, from what to what, and by which correction', () => {
    const told = since(before({ state: 'short', left: -0.04 }), weighed, [{ ...made, edition: 2 }, made])
    expect(told.corrections).toEqual([made])
    expect(told.moved).toEqual([{ id: pump.id, before: { state: 'short', left: -0.04 }, now: pump, by: [made] }])
  })
  test('tells none where none moved, though formulas were corrected', () => {
    expect(since(before({}), weighed, [made])).toEqual({ corrections: [made], moved: [] })
  })
  test('does not take noise for a movement, but takes a lost number for one', () => {
    expect(since(before({ left: pump.left! * (1 + 1e-6) }), weighed, [made]).moved).toEqual([])
    expect(since(before({ left: null }), weighed, [made]).moved.map((m) => m.id)).toEqual([pump.id])
  })
  test('names a margin that moved without a correction as such', () => {
    expect(since(before({ left: 0 }), weighed, []).moved).toMatchObject([{ id: pump.id, by: [] }])
  })
  test('is not misled by margins that there were not, or by names of every object', () => {
    expect(since({ edition: 1, margins: {} }, weighed, [made]).moved).toEqual([])
    expect(since({ edition: 1, margins: { gone: { state: 'holds', left: 1 } } }, [{ ...pump, id: 'constructor' }], [made]).moved).toEqual([])
  })
})
test('each edition after the first says what it corrected, in links that there are', () => {
  expect([...new Set(corrections.map((c) => c.edition))].sort((a, b) => a - b)).toEqual(Array.from({ length: edition - 1 }, (_, i) => i + 2))
  for (const c of corrections) for (const id of c.margins) expect(margins.map((m) => m.id)).toContain(id)
})
