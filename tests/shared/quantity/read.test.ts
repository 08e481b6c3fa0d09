import { describe, expect, test } from 'vitest'
import { read } from '@trochoid/compute/quantity/read.ts'
import { all, boost, charge, count, drop, faultOf, flow, force, hose, inductance, length, manifold, rail, rise, saysOf, share, speed, tank, torque, typed, valueOf } from './fields.ts'

describe('a number, with any unit of the field', () => {
  test.each([
    ['12 psi', drop, 82737.0875], ['0.8 bar', drop, 8e4], ['3/8 in', length, 0.009525], ['1 l/h', { ...flow, range: [1e-8, 1] as const }, 2.7777778e-7], ['650 cc/min', flow, 650e-6 / 60], ['12', length, 0.012], ['20 °C', charge, 293.15],
    ['68F', charge, 293.15], ['300 K', charge, 300], ['300 lb ft', torque, 406.745384], ['300 lb-ft', torque, 406.745384], ['500 lb', force, 2224.11081], ['7500', speed, 785.398163], ['12 %', share, 0.12], ['12%', share, 0.12], ['12', share, 0.12],
    ['½"', length, 0.0127], ['1 1/2 in', length, 0.0381], ['−0,5 bar', boost, -5e4], ['150 kPa abs', manifold, 15e4], ['14.7 psia', manifold, 101352.93], ['7 500 rpm', speed, 785.398163], ['4 mH', inductance, 0.004],
  ] as const)('%s', (text, of, si) => expect(valueOf(text, of) / si).toBeCloseTo(1, 7))
  test('a bare number is in the unit that the field shows', () => {
    expect(read('2', length, 'in')).toMatchObject({ ok: true, value: 0.0508, unit: 'in' })
    expect(read('2', length)).toMatchObject({ ok: true, value: 0.002, unit: 'mm' })
    expect(read('700', flow)).toMatchObject({ ok: true, unit: 'cm³/min' })
  })
  test('the unit that was typed is kept', () => {
    expect(read('12 psi', drop)).toMatchObject({ unit: 'psi' })
    expect(read('650 ml/min', flow)).toMatchObject({ unit: 'cm³/min' })
  })
})

describe('what has two meanings is asked', () => {
  test.each([['1,234', length], ['1,234 mm', length], ['7,500', speed], ['1.5 bar', manifold], ['7 psi', manifold], ['13 gal', tank], ['3 pints', tank], ['100 fl oz', tank], ['30 gph', flow], ['1 gal/h', flow], ['2 gallons', tank], ['20 °C', rise], ['36 °F', rise]] as const)('%s', (text, of) => {
    const asked = typed(text, of)
    expect(asked).toMatchObject({ ok: false, fault: 'ambiguous' })
    if (asked.ok) return
    expect(asked.choices?.length).toBeGreaterThan(0)
    // Whichever answer is taken can be typed and is not asked again.
    for (const choice of asked.choices!) expect(faultOf(choice, of), choice).not.toMatch(/ambiguous|syntax|unknown/)
  })
  test('gauge or absolute tells what gauge would be at sea level', () => {
    expect(typed('1.5 bar', manifold)).toMatchObject({ choices: ['1.5 bar abs', '251.32 kPa abs'] })
    expect(valueOf('251.32 kPa abs', manifold) / (1.5e5 + 101325)).toBeCloseTo(1, 4)
  })
  test('where only one reading is sensible it is taken', () => {
    expect(valueOf('350 kPa', manifold)).toBe(35e4)
    expect(valueOf('3 bar', rail)).toBe(3e5)
  })
  test('the size of a gallon is a fifth apart', () => expect(valueOf('10 imp gal', tank) / valueOf('10 US gal', tank)).toBeCloseTo(1.20095, 5))
})

describe('a wrong dimension names what is wanted and what was given', () => {
  test.each([
    ['5 kg', length, 'Length is a length; kg is a mass.'], ['3 m', speed, 'Shaft speed is a shaft speed; m is a length.'], ['125 Hz', speed, 'Hz is a frequency. They share a dimension but do not mean the same.'],
    ['14.7 psig', manifold, 'Manifold pressure is an absolute pressure and psi gauge is gauge: at sea level this is 202.68 kPa abs.'], ['3 bar abs', rail, 'Rail pressure is a gauge pressure and bar abs is absolute'],
    ['500 g/min', flow, 'Injector flow is a volume flow and g/min is a mass flow: divide by the fluid'], ['100 J', torque, 'Torque is a torque; J is an energy. They share a dimension'], ['5 kg', force, 'Force is a force; kg is a mass.'],
  ] as const)('%s', (text, of, says) => {
    expect(faultOf(text, of)).toBe('dimension')
    expect(saysOf(text, of)).toContain(says)
  })
  test('an unknown unit is named, with those that fit', () => {
    expect(saysOf('5 bananas', length)).toBe('“bananas” is not a unit this handbook knows. Length is a length: mm, µm, cm, m, km.')
    expect(faultOf('4 MH', inductance)).toBe('unknown unit')
  })
})

describe('nonsense is refused, with what would be right', () => {
  test('empty', () => {
    for (const text of ['', '   ', '\u00a0\u2009']) expect(typed(text, length)).toMatchObject({ ok: false, fault: 'empty' })
    expect(saysOf('', length)).toMatch(/^Type a length, such as \d/)
  })
  test.each(['abc', 'NaN', 'Infinity', '-Infinity', '<b>1</b>', '１２ mm', 'at 3 bar', '5 mm at', '5 mm @', '5 mm at 3 at 4', '1.2.3 mm', '1,2,3'])('%s', (text) => expect(faultOf(text, length)).toBe('syntax'))
  test.each([['0', length], ['-1', length], ['1e300', length], ['1e999', length], ['1/0 mm', length], ['0/0', length], ['1e-300', length], ['-300 °C', charge], ['-1 %', share], ['2.5', count], ['1/2', count], ['0', count]] as const)('%s is out of bounds', (text, of) => {
    expect(faultOf(text, of)).toBe('bounds')
  })
  test('numbers of a programmer are no numbers of a field', () => {
    for (const text of ['0x10 mm', '0b11', '0o7', '1_000']) expect(typed(text, length).ok, text).toBe(false)
  })
  test('bounds are told in the unit that was typed', () => {
    expect(saysOf('-1 in', length)).toContain('must be above zero')
    expect(saysOf('-1 in', length)).toContain('in to')
    expect(saysOf('-1 %', share)).toContain('cannot be negative')
    expect(saysOf('1e300', length)).toContain('more than a thousand times out')
    expect(saysOf('1e999', length)).toContain('not a finite number')
    expect(saysOf('-300 °C', charge)).toContain('below absolute zero')
    expect(saysOf('2.5', count)).toContain('whole number')
  })
  test('outside what is usual is doubted, not refused', () => {
    expect(read('2 m', length)).toMatchObject({ ok: true, value: 2, doubt: expect.stringContaining('usually') })
    expect(read('0.5 mm', length)).toMatchObject({ ok: true, doubt: expect.any(String) })
    expect(read('1 m', length)).not.toHaveProperty('doubt')
    expect(read('1 mm', length)).not.toHaveProperty('doubt')
    expect(faultOf('1001 m', length)).toBe('bounds')
    expect(faultOf('1000 m', length)).toContain('read as')
  })
  test('a field that may be below zero takes zero and less', () => {
    expect(valueOf('0', boost)).toBe(0)
    expect(valueOf('-0.9 bar', boost)).toBe(-9e4)
  })
  test('a text longer than any honest sum is refused at once, ten thousand brackets too', () => {
    for (const text of ['('.repeat(10000), '('.repeat(10000) + '1' + ')'.repeat(10000), '1'.repeat(121), '9^'.repeat(5000)]) {
      const started = performance.now()
      expect(faultOf(text, length)).toBe('syntax')
      expect(performance.now() - started).toBeLessThan(50)
    }
    expect(faultOf(`${'0'.repeat(117)}1 m`, length)).not.toBe('syntax')
  })
})

describe('a flow at a pressure', () => {
  test.each(['650 cc/min at 3 bar', '650 cc/min @ 3 bar', '650 cc/min@3 bar', '650 cc/min AT 3 bar'])('%s', (text) => expect(read(text, flow)).toEqual({ ok: true, value: 650 / 6e7 , unit: 'cm³/min', at: '3 bar' }))
  test('also behind a sum', () => expect(typed('2 * 650 cc/min at 43.5 psi', flow)).toMatchObject({ ok: true, at: '43.5 psi' }))
  test('a half of it is asked for', () => {
    expect(saysOf('at 3 bar', flow)).toMatch(/^Type a volume flow before “at”/)
    expect(saysOf('650 cc/min at', flow)).toContain('missing')
  })
})

describe('hose sizes', () => {
  test.each(['-6', '−6', 'dash 6', 'dash-6', '#6', 'AN6', 'AN-6', 'AN 6', '6AN', '6 AN', '-6 AN', '-6AN'])('%s', (text) => expect(valueOf(text, hose)).toBeCloseTo(5 / 16 * 0.0254, 9))
  test('a bore in a unit is a bore', () => {
    expect(valueOf('8 mm', hose)).toBe(0.008)
    expect(valueOf('3/8 in', hose)).toBeCloseTo(0.009525, 12)
    expect(valueOf('6', hose)).toBe(0.006)
  })
  test('a size that the table lacks is told with those it has', () => expect(saysOf('-7', hose)).toContain('3, 4, 5, 6, 8, 10, 12, 16'))
  test('only a hose reads dashes', () => expect(faultOf('-6', length)).toBe('bounds'))
})

test('every field shows an example that it reads itself', () => {
  for (const of of Object.values(all)) {
    const example = /such as (.*)\.$/.exec(saysOf('', of))![1]!
    expect(faultOf(example, of), `${of.name}: ${example}`).toMatch(/^read as/)
  }
})
