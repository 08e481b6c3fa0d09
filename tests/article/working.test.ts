import { describe, expect, test } from 'vitest'
import { equationTex, token } from '../../src/article/working/tex.ts'
import { symbolTex } from '../../src/article/working/symbol.ts'
import { filled, mathml } from '../../src/article/working/mathml.ts'
import { short } from '../../src/islands/working/value.ts'

const places = new Map(['a', 'b', 'c'].map((name) => [name, token('i', name)]))

describe('an equation in TeX', () => {
  test('keeps every name as a place of its own', () => {
    expect(equationTex('a * sqrt(b / c)', places)).toBe('\\v{i.a}\\cdot\\sqrt{\\frac{\\v{i.b}}{\\v{i.c}}}')
  })
  test('sets a power of a half as a root, and pi and powers of ten as they are written', () => {
    expect(equationTex('(a + b)^0.5', places)).toContain('\\sqrt{')
    expect(equationTex('2 * pi * a * 1e-6', places)).toMatch(/\\pi .*10\^\{-6\}/)
  })
})
describe('a symbol', () => {
  test('sets words and long subscripts upright', () => {
    expect(symbolTex('Δp_0')).toBe('\\Delta p_{0}')
    expect(symbolTex('R_air')).toBe('R_{\\mathrm{air}}')
    expect(symbolTex('Nu')).toBe('Nu')
  })
})
describe('MathML for the page', () => {
  test('carries no style attribute, and its slots take text, not markup', () => {
    const markup = mathml('{\\data{v=i.a}{\\text{0}}}+1', true)
    expect(markup).not.toContain('style=')
    const page = filled(markup, () => '<b>3</b> & more', (place) => `${place};a "name"`)
    expect(page).toContain('&lt;b&gt;3&lt;/b&gt; &amp; more')
    expect(page).toContain('data-v="i.a;a &quot;name&quot;"')
  })
})
test('numbers in a working end without idle zeros', () => {
  expect(short('650.0\u202fcm³/min')).toBe('650\u202fcm³/min')
  expect(short('3.500')).toBe('3.5')
  expect(short('1200')).toBe('1200')
  expect(short('0.0500')).toBe('0.05')
})
