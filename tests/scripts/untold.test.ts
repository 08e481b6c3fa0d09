import { parseSync } from 'vite'
import { describe, expect, test } from 'vitest'
import { untold } from '../../scripts/bundle/untold.ts'

const parse = (code: string): unknown => parseSync('sent.ts', code).program

type Transform = (this: { parse: typeof parse }, code: string, id: string) => { code: string } | null
const sent = (code: string, id = '/x/shared/boost/ratio.ts'): string => (untold().transform as unknown as Transform).call({ parse }, code, id)?.code ?? code

describe('what the browser is sent of a formula', () => {
  test('has its function, but none of its words', () => {
    const code = sent("export const about = { name: 'Ratio of two pressures', in: { a: inputsBut(other, ['b'], {}) } }\nexport const ratio = formula('ratio', {}, ({ a }) => a)")
    expect(code).not.toMatch(/Ratio of|inputsBut/)
    expect(code).toContain("formula('ratio', {}, ({ a }) => a)")
  })
  test('has the value and unit of a constant, but no name and source', () => {
    expect(sent("export const g = constant('gravity', 'g_n', 9.80665, 'm/s²', 'ISO 80000-3')", '/x/shared/formula/constants.ts')).toBe("export const g = constant('', '', 9.80665, 'm/s²', '')")
  })
  test('is as it stands in calculations and outside the computation', () => {
    const code = "export const about = { name: 'A' }"
    for (const id of ['/x/shared/boost/ratio.calc.ts', '/x/src/islands/about.ts']) expect(sent(code, id)).toBe(code)
  })
})
