import { describe, expect, test } from 'vitest'
import { solveFor } from '@trochoid/compute/calculation/backwards.ts'
import { calculation, free, labelOf, NoAnswer, noValue, numericInputs, quantityOf, run } from '@trochoid/compute/calculation/calculation.ts'
import { curveOver } from '@trochoid/compute/calculation/curve.ts'
import { moves } from '@trochoid/compute/calculation/moves.ts'
import { nowhere } from '@trochoid/compute/calculation/nowhere.ts'
import { reachable } from '@trochoid/compute/calculation/reaches.ts'
import { sampleValues, startValues } from '@trochoid/compute/calculation/samples.ts'
import { area, box, here, height, strips, surface } from './box.ts'

describe('running', () => {
  test('gives outputs, sentence and trace', () => {
    const { outputs, says, trace } = run(box, here)
    expect(outputs).toEqual({ whole: 3, part: 1.5 })
    expect(says).toBe('The part is {part}.')
    expect(trace.map((e) => e.id)).toEqual(['box-surface', 'box-part'])
    expect(trace[0]).toMatchObject({ depth: 0, outside: [] })
  })
  test('an input outside what the source states is told', () => {
    const told = (width: number) => (run(box, { ...here, width }).trace[0] as { outside: readonly string[] }).outside
    expect([0.9, 1, 4, 4.1].map((w) => told(w).length)).toEqual([1, 0, 0, 1])
    expect(surface.range).toEqual({ width: [1, 4] })
  })
  test('what comes out as no number is no answer, unless it may be lacking', () => {
    const lacking = { ...box, answer: () => ({ whole: NaN, part: 1 }) }
    expect(() => run(lacking, here)).toThrow(NoAnswer)
    expect(() => run(lacking, here)).toThrow(noValue(box, ['whole']))
    expect(run({ ...lacking, mayLack: ['whole'] }, here).outputs['part']).toBe(1)
    expect(() => run({ ...lacking, mayLack: ['part'] }, here)).toThrow(NoAnswer)
  })
  test('a solver without a bracket is no answer, another fault is a fault', () => {
    const made = (fault: Error) => calculation({ ...box, answer: () => { throw fault } })
    expect(() => run(made(new RangeError('no change of sign')), here)).toThrow(NoAnswer)
    expect(() => run(made(new TypeError('fault')), here)).toThrow(TypeError)
  })
  test('names and quantities', () => {
    expect(labelOf(box.in.height)).toBe('How high')
    expect(labelOf(box.in.width)).toBe('Width')
    expect(quantityOf(area)).toBe(area)
    expect(numericInputs(box)).toEqual(['width', 'height', 'strips', 'spare'])
    expect('label' in free(height, 1)).toBe(false)
  })
})
describe('backwards', () => {
  test('finds the input that gives the output', () => {
    const back = solveFor(box, here, 'width', 'part', 3)
    expect(back.values[0]).toBeCloseTo(4, 9)
    expect(back.values.length).toBe(1)
    expect(back.jumps).toEqual([])
    expect(back.notes.some((n) => n.includes('may be missed'))).toBe(true)
  })
  test('says that none gives it, and what was passed over', () => {
    const none = solveFor(box, here, 'width', 'part', 90)
    expect(none.values).toEqual([])
    expect(none.notes.length).toBe(1)
    expect(none.notes[0]).toContain('No Width from')
    const passed = solveFor(box, here, 'height', 'whole', 1)
    expect(passed.values[0]).toBeCloseTo(0.5, 9)
    expect(passed.notes).toContain('Part of the range has no answer and was passed over.')
  })
  test('a whole number leaps past what it cannot give', () => {
    const back = solveFor(box, here, 'strips', 'part', 1.2)
    expect(back.values).toEqual([])
    expect(back.jumps.length).toBe(1)
    expect(back.notes.some((n) => n.includes('leaps past'))).toBe(true)
    expect(solveFor(box, here, 'width', 'whole', 3).notes.some((n) => n.includes('leaps'))).toBe(false)
  })
  test('refuses what is no number and what is no output', () => {
    expect(() => solveFor(box, here, 'kind', 'part', 1)).toThrow('kind is not a number')
    expect(() => solveFor(box, here, 'depth', 'part', 1)).toThrow('depth is not a number')
    expect(() => solveFor(box, here, 'width', 'volume', 1)).toThrow('volume is not an output')
  })
  test('a fault is not taken for a gap', () => {
    const faulty = { ...box, answer: () => { throw new TypeError('fault') } }
    expect(() => solveFor(faulty, here, 'width', 'part', 1)).toThrow(TypeError)
    expect(() => curveOver(faulty, here, 'width', 'part')).toThrow(TypeError)
    expect(() => reachable(faulty, here)).toThrow(TypeError)
    expect(() => moves({ ...box, answer: (x) => { if (x !== here) throw new TypeError('fault'); return box.answer(x as never) } }, here)).toThrow(TypeError)
  })
})
describe('a curve', () => {
  test('runs over the sensible range at even places', () => {
    const { x, y } = curveOver(box, here, 'width', 'whole', 5)
    expect(x).toEqual([1, 2, 3, 4, 5])
    expect(y).toEqual([1.5, 3, 4.5, 6, 7.5])
    expect(curveOver(box, here, 'width', 'whole').x.length).toBe(65)
  })
  test('reaches out to a value beyond the range, on both sides', () => {
    expect(curveOver(box, { ...here, width: 9 }, 'width', 'whole', 3).x).toEqual([1, 5, 9])
    expect(curveOver(box, { ...here, width: -1 }, 'width', 'whole', 3).x).toEqual([-1, 2, 5])
    expect(curveOver(box, { ...here, width: null }, 'width', 'whole', 3).x).toEqual([1, 3, 5])
  })
  test('whole numbers are taken whole, each once', () => {
    expect(curveOver(box, here, 'strips', 'part')).toEqual({ x: [1, 2, 3, 4], y: [3, 1.5, 1, 0.75] })
    expect(curveOver(box, { ...here, strips: 400 }, 'strips', 'part', 5).x).toEqual([1, 101, 201, 300, 400])
  })
  test('no answer and no number are gaps', () => {
    expect(curveOver(box, here, 'height', 'whole', 7).y).toEqual([null, -4, -2, 0, 2, 4, 6])
    expect(curveOver({ ...box, answer: () => ({ whole: Infinity, part: 1 }) }, here, 'height', 'whole', 2).y).toEqual([null, null])
    expect(() => curveOver(box, here, 'kind', 'whole')).toThrow('no number to draw over')
  })
})
describe('what moves it', () => {
  test('each number by its step, up and down', () => {
    const moved = moves(box, here)
    expect(moved.map((m) => m.input)).toEqual(['width', 'height', 'strips'])
    expect(moved[0]!.step).toBe(0.01)
    expect(moved[0]!.up['whole']).toBeCloseTo(0.015, 12)
    expect(moved[0]!.down['whole']).toBeCloseTo(-0.015, 12)
    expect(moved[2]!.up['part']).toBeCloseTo(1 - 1.5, 12)
    expect(moved[2]!.down['part']).toBeCloseTo(3 - 1.5, 12)
    expect(moved[2]!.up['whole']).toBe(0)
  })
  test('a step into no answer is null', () => {
    const moved = moves(box, { ...here, height: -1.99 })
    expect(moved[1]!.down).toEqual({ whole: null, part: null })
    expect(moved[1]!.up['whole']).toBeCloseTo(0.04, 12)
  })
})
describe('numbers from nowhere', () => {
  const { outputs, trace } = run(box, here)
  test('none where all is traced', () => expect(nowhere(box, here, trace, outputs)).toEqual([]))
  test('an input of a formula, and an output, that nothing gave', () => {
    expect(nowhere(box, { ...here, height: 7 }, trace, outputs)).toEqual(['box-surface.height = 1.5'])
    expect(nowhere(box, here, trace, { ...outputs, part: 77 })).toEqual(['output part = 77'])
    expect(nowhere(box, here, trace, { ...outputs, part: NaN })).toEqual([])
    expect(nowhere(box, here, [], { whole: 0, part: 1 })).toEqual([])
  })
  test('a recorded root is known, one inside another formula is not', () => {
    const found = { id: 'root', name: 'x', value: 77, residual: 0 } as const
    expect(nowhere(box, here, [...trace, { ...found, depth: 0 }], { part: 77 })).toEqual([])
    expect(nowhere(box, here, [...trace, { ...found, depth: 1 }], { part: 77 })).toEqual(['output part = 77'])
  })
  test('numbers inside curves and several outputs are known', () => {
    expect(nowhere(box, { ...here, spare: { x: [5, 6], y: [77] } }, trace, { part: 77, whole: 6 })).toEqual([])
    expect(nowhere(box, here, [{ id: 'f', in: { a: 2, b: NaN, c: 'text' }, out: { p: 88 }, depth: 0, outside: [] }], { part: 88 })).toEqual([])
  })
})
describe('samples', () => {
  test('start values are what inputs begin with', () => expect(startValues(box)).toEqual({ width: 2, height: 1.5, strips: 2, kind: 'whole', spare: 3 }))
  test('of a point value the middle of its range, of a field without a start nothing where it may be missing', () => {
    const shapes = { ...box, in: { a: { origin: 'point', path: 'a', shape: height }, b: { origin: 'field', path: 'b', shape: height, start: null }, c: { origin: 'field', path: 'c', shape: height, start: null, optional: true }, d: { origin: 'field', path: 'd', shape: height, start: 0.5 }, e: { origin: 'point', path: 'e', shape: { ...strips, range: [1, 4] } } } } as unknown as typeof box
    expect(startValues(shapes)).toEqual({ a: 0, b: 0, c: null, d: 0.5, e: 3 })
  })
  test('samples lie in range, spread over it, whole where whole, and come again', () => {
    const drawn = Array.from({ length: 200 }, (_, i) => sampleValues(box, i) as { width: number; height: number; strips: number; kind: string })
    expect(sampleValues(box, 5)).toEqual(sampleValues(box, 5))
    for (const d of drawn) {
      expect(d.width).toBeGreaterThanOrEqual(1)
      expect(d.width).toBeLessThanOrEqual(5)
      expect(d.height).toBeGreaterThanOrEqual(-3)
      expect(d.height).toBeLessThanOrEqual(3)
      expect([1, 2, 3, 4]).toContain(d.strips)
    }
    for (const name of ['width', 'height'] as const) {
      const of = drawn.map((d) => d[name])
      expect(new Set(of).size).toBeGreaterThan(190)
      const mean = of.reduce((a, b) => a + b, 0) / of.length
      expect(Math.abs(mean - (name === 'width' ? 3 : 0))).toBeLessThan(0.5)
    }
    expect(new Set(drawn.map((d) => d.kind))).toEqual(new Set(['whole', 'half']))
    expect(new Set(drawn.map((d) => d.strips)).size).toBe(4)
  })
  test('formulas that only some inputs reach are found', () => expect(reachable(box, { ...here, kind: 'whole' })).toEqual(['box-surface', 'box-part']))
})
