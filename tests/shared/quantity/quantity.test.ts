import { expect, test } from 'vitest'
import { choice, curveOf, gradeOf, isQuantity, mapOf, quantity, role } from '@trochoid/compute/quantity/quantity.ts'
import * as si from '@trochoid/compute/quantity/si.ts'

test('an id is the name in small letters and dashes', () => {
  expect(quantity('Air–fuel (equivalence) ratio', 'λ', 'number', [0, 1], 0.1).id).toBe('air-fuel-equivalence-ratio')
})
test('a role keeps what is measured and changes what it is called', () => {
  const of = quantity('Flow', 'Q', 'volumeFlow', [0, 1], 0.1)
  expect(role(of, 'Q_0')).toEqual({ ...of, symbol: 'Q_0' })
  expect(role(of, 'Q_0', 'Rated flow')).toMatchObject({ id: 'flow', name: 'Rated flow', symbol: 'Q_0' })
})
test('only a single number is a quantity', () => {
  const of = quantity('Flow', 'Q', 'volumeFlow', [0, 1], 0.1)
  expect([of, choice('Way', { a: 'one' }), gradeOf('Oil'), curveOf('Curve', of, of), mapOf('Map')].map(isQuantity)).toEqual([true, false, false, false, false])
})
test('writers of SI numbers', () => {
  expect([si.mm(1), si.um(1), si.cm2(1), si.cm3(1), si.litre(1), si.ms(1), si.minutes(2), si.bar(1), si.kPa(1), si.MPa(1), si.kW(1), si.percent(5), si.kmh(36)]).toEqual([1e-3, 1e-6, 1e-4, 1e-6, 1e-3, 1e-3, 120, 1e5, 1e3, 1e6, 1e3, 0.05, 10])
  const near = [[si.degC(20), 293.15], [si.rpm(60), 2 * Math.PI], [si.deg(180), Math.PI], [si.ccPerMin(60), 1e-6], [si.lPerH(3600), 1e-3], [si.lPerMin(60), 1e-3], [si.gPerKWh(3.6), 1e-9]] as const
  for (const [value, expected] of near) expect(value / expected).toBeCloseTo(1, 12)
})
