import { describe, expect, test } from 'vitest'
import { calculation, free, NoAnswer } from '@trochoid/compute/calculation/calculation.ts'
import { field } from '@trochoid/compute/build/field.ts'
import { quantity } from '@trochoid/compute/quantity/quantity.ts'
import { model, start } from '../../src/islands/calculator/model.ts'
import { linkText } from '../../src/islands/calculator/link.ts'
import { readLink } from '../../src/islands/calculator/readLink.ts'
import { fetchReader } from '../../src/islands/parts/typed.ts'

await fetchReader()
const flow = quantity('Test flow', 'Q', 'volumeFlow', [1e-6, 1e-3], 1e-6, { show: ['cm³/min', 'US gal/h'] })
const drop = quantity('Test drop', 'Δp', 'pressureDifference', [1e4, 1e6], 1e4, { show: ['bar', 'psi'] })
const of = calculation({
  id: 'test', title: 'Test', theme: 'fuel', asks: 'What?', article: 'none', cautions: [], leavesOut: 'all else',
  in: { flow: field('test.flow', flow, 1e-5, { at: 'test.drop' }), drop: field('test.drop', drop, 3e5), other: free(drop, 2e5) },
  out: { out: flow }, curve: ['drop', 'out'],
  answer: ({ flow, drop }) => { if (drop > 9e5) throw new NoAnswer('test', 'Too much.'); return { out: flow } },
  says: () => '{out}',
})
const fresh = () => model(start(of, { flow: 1e-5, drop: 3e5, other: 2e5 }, 'metric'))

describe('a calculator', () => {
  test('takes what was typed, keeps the text, and goes on showing its unit', () => {
    const m = fresh()
    m.type('drop', '60 psi')
    const now = m.state.get()
    expect(now.texts['drop']).toBe('60 psi')
    expect(now.units['drop']).toBe('psi')
    expect(now.values['drop']).toBeCloseTo(60 * 6894.757, 0)
    m.type('drop', '30')
    expect(m.state.get().values['drop']).toBeCloseTo(30 * 6894.757, 0)
  })
  test('keeps the last good answer beside a fault, and drops the fault when it is mended', () => {
    const m = fresh()
    m.type('drop', '3 kg')
    expect(m.state.get().faults['drop']?.says).toContain('pressure difference')
    expect(m.state.get().result?.outputs['out']).toBe(1e-5)
    m.type('drop', '3 bar')
    expect(m.state.get().faults).toEqual({})
  })
  test('sends the "at" of a rating to the field that keeps it', () => {
    const m = fresh()
    m.type('flow', '650 cc/min at 43.5 psi')
    expect(m.state.get().values['flow']).toBeCloseTo(650e-6 / 60, 9)
    expect(m.state.get().values['drop']).toBeCloseTo(43.5 * 6894.757, 0)
  })
  test('refuses an "at" where no field keeps it', () => {
    const m = fresh()
    m.type('other', '2 bar at 3 bar')
    expect(m.state.get().faults['other']?.says).toContain('at 3 bar')
    expect(m.state.get().values['other']).toBe(2e5)
  })
  test('says why there is no answer', () => {
    const m = fresh()
    m.type('drop', '9.5 bar')
    expect(m.state.get().none).toBe('Too much.')
    expect(m.state.get().result).toBeNull()
  })
  test('follows another build except where the reader typed over it', () => {
    const m = fresh()
    m.type('flow', '700 cc/min')
    m.rebase({ flow: 2e-5, drop: 4e5, other: 2e5 }, 'own')
    expect(m.state.get().values['flow']).toBeCloseTo(700e-6 / 60, 9)
    expect(m.state.get().values['drop']).toBe(4e5)
    m.reset('flow')
    expect(m.state.get().values['flow']).toBe(2e-5)
  })
  test('steps by the tolerance of the quantity', () => {
    const m = fresh()
    m.step('drop', 1)
    expect(m.state.get().values['drop']).toBeCloseTo(3.1e5)
  })
})

describe('an address', () => {
  test('brings back the numbers it was made from, without signs that addresses escape', async () => {
    const m = fresh()
    m.type('drop', '60 psi')
    const text = linkText(m.state.get())
    expect(text).toMatch(/^[\w=&/.-]+$/)
    const read = (await readLink(of, `#${text}`))!
    expect(read.faults).toEqual([])
    expect(read.values['drop']).toBeCloseTo(m.state.get().values['drop'] as number, 3)
    expect(read.values['flow']).toBeCloseTo(1e-5, 12)
  })
})
