import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readGrade } from '@trochoid/compute/quantity/grade.ts'
import { units } from '@trochoid/compute/quantity/units.ts'
import { all, typed } from './fields.ts'

const fields = fc.constantFrom(...Object.values(all))
const token = fc.oneof(
  fc.constantFrom('+', '-', '*', '/', '(', ')', '^', ' ', ',', '.', '−', '×', ' at ', '@', 'e', 'E', '%', '"', "'", '°', '½', '²', ';', '=', ':', '!', '[', ']', '{', '}', '\\', '\n', '\0', 'x', 'in', 'to', 'mod', '#', '-6'),
  fc.constantFrom(...units.map((u) => u.name)), fc.integer({ min: 0, max: 99999 }).map(String), fc.double().map(String),
)

const sane = (text: string, of: (typeof all)[keyof typeof all]): void => {
  const started = performance.now()
  const read = typed(text, of)
  // Far above what any text takes, for a machine that does other work beside.
  expect(performance.now() - started, text).toBeLessThan(250)
  if (read.ok) {
    expect(Number.isFinite(read.value), text).toBe(true)
    expect(of.range[0] > 0 && read.value <= 0, text).toBe(false)
  } else expect(read.says.length, text).toBeGreaterThan(10)
}

// The first sum of a run pays for starting the parser; that is no part of reading.
typed('1 + 1', all.length)

test('any text is answered, quickly, with a finite number or a sentence', () => fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 200 }), fc.string({ unit: 'grapheme', maxLength: 130 })), fields, sane), { numRuns: 1500 }))
test('so is any heap of what sums are made of', () => fc.assert(fc.property(fc.array(token, { maxLength: 24 }).map((parts) => parts.join('')), fields, sane), { numRuns: 3000 }))
test('so is any text as an oil grade', () => fc.assert(fc.property(fc.string({ maxLength: 60 }), (text) => {
  const read = readGrade(text)
  expect(read.ok ? read.value.length : read.says.length).toBeGreaterThan(0)
})))
