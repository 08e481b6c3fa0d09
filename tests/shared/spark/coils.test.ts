import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NoAnswer, run } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import { coilChargeTime } from '@trochoid/compute/spark/coilChargeTime.ts'
import { coilCurrentAfter } from '@trochoid/compute/spark/coilCurrentAfter.ts'
import { coilMeanCurrent } from '@trochoid/compute/spark/coilMeanCurrent.ts'
import charge from '@trochoid/compute/spark/coilCharge.calc.ts'
import energy from '@trochoid/compute/spark/coilEnergy.calc.ts'

const coil = { inductance: 4e-3, resistance: 0.6, voltage: 12.5 }

describe('charging a coil', () => {
  test('the current after the charge time is the wanted one', () => fc.assert(fc.property(fc.double({ min: 0.1, max: 20, noNaN: true }), (current) => {
    expect(coilCurrentAfter({ ...coil, time: coilChargeTime({ ...coil, current }) })).toBeCloseTo(current, 9)
  })))
  test('with hardly any resistance it is L I / U', () => {
    expect(coilChargeTime({ inductance: 4e-3, resistance: 1e-7, current: 7, voltage: 14 })).toBeCloseTo(2e-3, 8)
  })
  test('less voltage takes longer, by more than in proportion', () => {
    const at = (voltage: number) => coilChargeTime({ ...coil, current: 7, voltage })
    expect(at(7) / at(14)).toBeGreaterThan(2)
  })
  test('the mean current is that of the charge drawn, found by summing the current', () => {
    const time = coilChargeTime({ ...coil, current: 7.5 })
    let drawn = 0
    const n = 20000
    for (let i = 0; i < n; i++) drawn += coilCurrentAfter({ ...coil, time: (time * (i + 0.5)) / n }) * (time / n)
    const speed = 100
    expect(coilMeanCurrent({ ...coil, current: 7.5, time, sparks: 2, speed, coils: 3 })).toBeCloseTo((drawn * 2 * 3 * speed) / (2 * Math.PI), 6)
  })
})

describe('charge time in the window', () => {
  const start = { ...startValues(charge), speed: 800 * Math.PI / 3, layout: 'own', inductance: 4e-3, resistance: 0.6, current: 7.5, voltage: 13.5, driver: 1, burn: 1e-3 }
  test('8,000 rpm leaves 7.5 ms less the burn for a coil of its own, half before the burn for a shared one', () => {
    expect(charge.answer(start)['window']).toBeCloseTo(6.5e-3, 9)
    expect(charge.answer({ ...start, layout: 'shared' })['window']).toBeCloseTo(2.75e-3, 9)
  })
  test('the voltage kept by the driver is missing at the coil', () => {
    expect(charge.answer(start)['time']).toBeCloseTo(coilChargeTime({ ...coil, current: 7.5 }), 12)
  })
  test('says when the time is not there', () => {
    expect(run(charge, start).says).not.toContain('weak')
    expect(run(charge, { ...start, layout: 'shared' }).says).toContain('weak')
  })
  test('a current that is never reached has no answer, just below it has one', () => {
    expect(() => charge.answer({ ...start, current: 12.5 / 0.6 })).toThrow(NoAnswer)
    expect(() => charge.answer({ ...start, current: 30 })).toThrow(NoAnswer)
    expect(charge.answer({ ...start, current: 20.8 })['time']).toBeGreaterThan(0.03)
  })
  test('a supply below the driver’s own drop has no answer', () => {
    expect(() => charge.answer({ ...start, voltage: 1, driver: 2 })).toThrow(NoAnswer)
    expect(() => charge.answer({ ...start, voltage: 1, driver: 1 })).toThrow(NoAnswer)
  })
  test('the energy after a charge time is half L I²', () => {
    const out = energy.answer({ ...startValues(energy), time: 3e-3, inductance: 4e-3, resistance: 0.6, voltage: 13.5, driver: 1 })
    expect(out['energy']).toBeCloseTo(2e-3 * out['current']! ** 2, 9)
    expect(out['current']).toBeCloseTo(coilCurrentAfter({ ...coil, time: 3e-3 }), 9)
  })
})
