import { describe, expect, test } from 'vitest'
import { airFlow, area, charge, count, drop, faultOf, flow, force, length, manifold, rail, rise, saysOf, share, speed, stress, tank, torque, typed, valueOf } from './fields.ts'

describe('sums', () => {
  test.each([
    ['2 * 650 cc/min', flow, 1300e-6 / 60], ['2 x 650 cc/min', flow, 1300e-6 / 60], ['2×650 cc/min', flow, 1300e-6 / 60], ['1/2 in + 3 mm', length, 0.0157], ['1/2" + 3mm', length, 0.0157], ['1 1/2 in + 3 mm', length, 0.0411],
    ['2 * (3 mm + 1/8 in)', length, 0.01235], ['10 in / 2', length, 0.127], ['7 500 + 100', speed, 7600 * Math.PI / 30], ['5 ft - 4 ft', length, 0.3048], ['2 * 12,5 mm', length, 0.025], ['−3 mm + 5 mm', length, 0.002],
    ['3 bar + 5 psi', rail, 334473.786], ['5 L / (2 min)', flow, 2.5e-3 / 60], ['1 L / 20 min', flow, 5e-5 / 60], ['500 g/min / (0.75 kg/L)', flow, 5e-4 / 60 / 0.75], ['100 N * 3 m', torque, 300], ['2 * 100 lb ft', torque, 271.16359],
    ['10 mm * 20 mm', area, 2e-4], ['2.5 mm^2 + 1 cm²', area, 102.5e-6], ['2 * 500 lb', force, 4448.2216], ['60 L/min * 10 g/L', airFlow, 0.01], ['12 % + 3 %', share, 0.15], ['10 mm / 20 mm', share, 0.5], ['50 % * 10 mm', length, 0.005],
    ['20 K + 36 Δ°F', rise, 40], ['290 K + 5 K', charge, 295], ['2 * 150', length, 0.3], ['101.3 kPa abs + 0.5 bar', manifold, 151300], ['2*150 MPa', stress, 3e8], ['2 * 2', count, 4], ['+5 mm + (2 mm)', length, 0.007],
    ['0.5 * 800 kg/m³ * (20 m/s) * (20 m/s)', drop, 160000], ['2 * 3 N·m + 1 N m', torque, 7],
  ] as const)('%s', (text, of, si) => expect(valueOf(text, of) / si).toBeCloseTo(1, 7))
})

describe('what a sum leaves open is asked, and each answer can be typed', () => {
  test.each([['2 * 75 kPa', manifold], ['100 kPa + 14.5 psi', manifold], ['2 * 1,234 mm', length], ['2 * 13 gal', tank], ['2 * 30 gal/h', flow], ['2 * 20 °C', rise]] as const)('%s', (text, of) => {
    const asked = typed(text, of)
    expect(asked).toMatchObject({ ok: false, fault: 'ambiguous' })
    if (asked.ok) return
    expect(asked.choices?.length).toBeGreaterThan(0)
    for (const choice of asked.choices!) expect(faultOf(choice, of), choice).not.toMatch(/ambiguous|syntax|unknown/)
  })
  test('degrees with a zero point of their own cannot be added', () => {
    for (const text of ['20 °C + 5 °C', '20 °C + 5 K', '2 * 20 °C', '20 + 5 °F']) expect(saysOf(text, charge), text).toContain('add and scale in K')
  })
})

describe('a sum that cannot be', () => {
  test.each([
    ['5 ft 3 in', length, 'Put a sign between the parts'], ['5 mm + 3', length, 'One part of this sum has a unit and another has none'], ['5 mm + 3 kg', length, 'adds a length to a mass'], ['5 mm * 3 mm', length, 'comes out as an area'],
    ['10 mm / 2 mm', length, 'comes out as a plain number'], ['2 * 60 Hz', speed, 'Hz is a frequency'], ['2 * 5 kJ', torque, 'kJ is an energy'], ['2 * 1 barg', manifold, 'bar gauge is a gauge pressure'], ['3 bar abs + 1 bar', rail, 'bar abs is an absolute pressure'],
    ['2 * 3 bananas', length, '“bananas” is not a unit'], ['2^3 mm', length, 'Powers are read in units only'], ['9^9^9^9', length, 'Powers are read in units only'], ['m^9 * 1', length, 'Powers are read in units only'], ['3 mm^7', length, 'Powers are read in units only'],
    ['9**9', length, 'cannot be read as a sum'], ['2 * ', length, 'cannot be read as a sum'], ['(1 + 2', length, 'cannot be read as a sum'], ['3/2*1', count, 'whole number'], ['3 mm - 5 mm', length, 'must be above zero'], ['1e200*1e200', length, 'not a finite number'],
    ['2 * 3 mm * 5 s', length, 'something with no name here'],
  ] as const)('%s', (text, of, says) => {
    expect(typed(text, of).ok).toBe(false)
    expect(saysOf(text, of)).toContain(says)
  })
  test.each(['1 mm;alert(1)', 'sqrt(4) mm', '3 mm = x', 'import("fs") + 1', '[1,2] mm', '1 mm to in', '2 > 1', '1 ? 2 : 3', '{a: 1}', '1:3', 'f(x) = 2', '4!', '5 % 3 mm', '0x10 + 1', '"2" + 1', 'true + 1', '2 and 1', "1 mm'"])('%s is no sum of a field', (text) => {
    expect(typed(text, length).ok).toBe(false)
  })
  test('twenty brackets are read, twenty-one are not', () => {
    expect(faultOf(`${'('.repeat(20)}1${')'.repeat(20)}`, length)).toMatch(/^read as/)
    expect(saysOf(`${'('.repeat(21)}1${')'.repeat(21)}`, length)).toContain('21 brackets')
  })
})
