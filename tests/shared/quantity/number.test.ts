import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readNumber, tidy } from '@trochoid/compute/quantity/number.ts'
import { plainNumbers } from '@trochoid/compute/quantity/numerals.ts'

const value = (text: string): number | null | 'ambiguous' => {
  const read = readNumber(tidy(text))
  return read === null ? null : 'ambiguous' in read ? 'ambiguous' : read.value
}

describe('a number as people type it', () => {
  test.each([
    ['12', 12], ['12.5', 12.5], ['12,5', 12.5], ['.5', 0.5], [',5', 0.5], ['0,001', 0.001], ['5.', 5], ['+3', 3], ['-3', -3], ['−3', -3], ['–3', -3], ['－3', -3],
    ['1e3', 1000], ['1E-3', 0.001], ['1.5e+2', 150], ['7 500', 7500], ['7\u2009500', 7500], ['7\u202f500', 7500], ['7\u00a0500', 7500], ['12 345 678', 12345678], ['7 500,5', 7500.5],
    ['1,234.5', 1234.5], ['1.234,5', 1234.5], ['1,234,567', 1234567], ['1.234.567', 1234567], ['1,234,567.8', 1234567.8], ['12,34', 12.34], ['1234,5', 1234.5], ['0,234', 0.234],
    ['1/2', 0.5], ['3/8', 0.375], ['-3/8', -0.375], ['1 1/2', 1.5], ['-1 1/2', -1.5], ['2 3 / 4', 2.75], ['½', 0.5], ['1½', 1.5], ['1 ½', 1.5], ['⅝', 0.625], ['⅔', 2 / 3],
    ['5 × 10⁻³', 0.005], ['1.25 × 10⁸', 1.25e8], ['−2 × 10²', -200],
  ])('%s', (text, expected) => expect(value(text)).toBeCloseTo(expected, 12))
  test.each(['1,234', '-1,234', '12,345', '999,000'])('%s is asked, not guessed', (text) => expect(value(text)).toBe('ambiguous'))
  test.each(['abc', '', 'NaN', 'Infinity', '-', '.', '1.2.3', '1,2,3', '1,23,456', '1.2,3.4', '(1)'])('%s begins with no number', (text) => expect(value(text)).toBeNull())
  test('both readings of a comma are offered', () => {
    expect(readNumber('1,234')).toEqual({ ambiguous: ['1.234', '1234'] })
    expect(readNumber('250,000 Pa')).toEqual({ ambiguous: ['250.000', '250000'] })
  })
  test('what follows the number is left', () => {
    expect(readNumber('12 mm')).toEqual({ value: 12, rest: ' mm' })
    expect(readNumber('3/8 in')).toEqual({ value: 0.375, rest: ' in' })
    expect(readNumber('1/2.5')).toMatchObject({ value: 1, rest: '/2.5' })
  })
  test('any number written by the machine is read back', () => fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), (x) => {
    expect(value(String(x))).toBeCloseTo(x, 5)
    expect(value(x.toFixed(6).replace('.', ',').replace('-', '−'))).toBeCloseTo(Number(x.toFixed(6)), 5)
  })))
})

describe('tidying', () => {
  test('spaces, minus signs, times and division become one of each', () => {
    expect(tidy('  3  −  2 ')).toBe('3 - 2')
    expect(tidy('2 × 3 ÷ 4')).toBe('2 * 3 / 4')
    expect(tidy('2 x 650 cc/min')).toBe('2*650 cc/min')
    expect(tidy('2x3X4')).toBe('2*3*4')
  })
  test('a letter x in a word, and hexadecimal, stay', () => {
    expect(tidy('5 max')).toBe('5 max')
    expect(tidy('0x10')).toBe('0x10')
  })
})

describe('numbers inside a sum', () => {
  test.each([
    ['7 500 + 100', '7500 + 100'], ['1 1/2 in + 3 mm', '(1+1/2) in + 3 mm'], ['2 * 12,5 mm', '2 * 12.5 mm'], ['1,234.5 + 1', '1234.5 + 1'], ['2 * 1 500/4', '2 * 1500/4'], ['1.5e3 * 2', '1.5e3 * 2'],
  ])('%s', (text, plain) => expect(plainNumbers(text)).toBe(plain))
  test('a comma with two readings is handed back', () => expect(plainNumbers('2 * 1,234 mm')).toEqual({ numeral: '1,234', ambiguous: ['1.234', '1234'] }))
  test('what is no numeral is left for the parser to refuse', () => expect(plainNumbers('1.2.3')).toBe('1.2.3'))
})
