import { describe, expect, test } from 'vitest'
import { kinds, type Kind } from '@trochoid/compute/quantity/kinds.ts'
import { dimOf, unitOf, units, unitsNamed } from '@trochoid/compute/quantity/units.ts'

/**
 * Factors as printed, to seven figures, in A. Thompson, B. N. Taylor, Guide for the Use of the International System of Units, NIST Special
 * Publication 811 (2008), appendix B.8. From memory: what they
 * guard against is a slip in one of our own factors.
 */
const printed: readonly (readonly [kind: Kind, unit: string, factor: string])[] = [
  ['length', 'in', '2.54 E-02'], ['length', 'ft', '3.048 E-01'], ['length', 'thou', '2.54 E-05'], ['length', 'µm', '1.0 E-06'], ['distance', 'mi', '1.609344 E+03'],
  ['area', 'in²', '6.4516 E-04'], ['volume', 'in³', '1.638706 E-05'], ['volume', 'US gal', '3.785412 E-03'], ['volume', 'imp gal', '4.54609 E-03'], ['volume', 'US fl oz', '2.957353 E-05'],
  ['volume', 'imp fl oz', '2.841306 E-05'], ['volume', 'US qt', '9.463529 E-04'], ['volume', 'US pt', '4.731765 E-04'], ['volume', 'L', '1.0 E-03'],
  ['mass', 'lb', '4.535924 E-01'], ['mass', 'oz', '2.834952 E-02'], ['time', 'h', '3.6 E+03'], ['speed', 'mph', '4.4704 E-01'], ['speed', 'km/h', '2.777778 E-01'], ['speed', 'ft/s', '3.048 E-01'],
  ['acceleration', 'gₙ', '9.80665 E+00'], ['shaftSpeed', 'rpm', '1.047198 E-01'], ['angle', '°', '1.745329 E-02'],
  ['pressure', 'psi', '6.894757 E+03'], ['pressure', 'bar', '1.0 E+05'], ['pressure', 'atm', '1.01325 E+05'], ['pressure', 'inHg', '3.386389 E+03'], ['pressure', 'mmHg', '1.333224 E+02'],
  ['pressureDifference', 'inH₂O', '2.490889 E+02'], ['pressure', 'kgf/cm²', '9.80665 E+04'], ['stress', 'ksi', '6.894757 E+06'],
  ['force', 'lbf', '4.448222 E+00'], ['force', 'kgf', '9.80665 E+00'], ['torque', 'lbf ft', '1.355818 E+00'], ['torque', 'lbf in', '1.129848 E-01'], ['torque', 'kgf m', '9.80665 E+00'],
  ['energy', 'BTU', '1.055056 E+03'], ['energy', 'kWh', '3.6 E+06'], ['power', 'hp', '7.456999 E+02'], ['power', 'PS', '7.354988 E+02'],
  ['massFlow', 'lb/min', '7.559873 E-03'], ['massFlow', 'lb/h', '1.259979 E-04'], ['massFlow', 'lb/s', '4.535924 E-01'], ['volumeFlow', 'US gal/min', '6.309020 E-05'], ['volumeFlow', 'ft³/min', '4.719474 E-04'],
  ['density', 'lb/ft³', '1.601846 E+01'], ['density', 'lb/US gal', '1.198264 E+02'], ['density', 'g/cm³', '1.0 E+03'], ['dynamicViscosity', 'cP', '1.0 E-03'], ['kinematicViscosity', 'cSt', '1.0 E-06'],
  ['inertia', 'lb ft²', '4.214011 E-02'], ['inertia', 'lb in²', '2.926397 E-04'], ['stiffness', 'lbf/in', '1.751268 E+02'], ['specificFuel', 'lb/(hp h)', '1.689659 E-07'],
]
test.each(printed)('%s %s is %s', (kind, unit, factor) => {
  const [mantissa, power] = factor.split(' E') as [string, string]
  const expected = Number(`${mantissa}e${power}`)
  // Half of the last printed place of seven figures, or exact where fewer are printed.
  const exact = mantissa.replace('.', '').length < 7
  expect(Math.abs(unitOf(kind, unit).factor / expected - 1)).toBeLessThan(exact ? 1e-12 : 0.5e-6 / Number(mantissa) * 1.0001)
})

describe('temperatures', () => {
  const si = (kind: Kind, name: string, x: number) => { const u = unitOf(kind, name); return x * u.factor + u.offset }
  test('fixed points', () => {
    expect(si('temperature', '°C', 0)).toBe(273.15)
    expect(si('temperature', '°F', 32)).toBeCloseTo(273.15, 10)
    expect(si('temperature', '°F', 212)).toBeCloseTo(373.15, 10)
    expect(si('temperature', '°F', -40)).toBeCloseTo(si('temperature', '°C', -40), 10)
    expect(si('temperature', '°R', 491.67)).toBeCloseTo(273.15, 10)
    expect(si('temperature', 'K', 300)).toBe(300)
  })
  test('a difference has no zero point', () => {
    for (const u of units.filter((x) => x.kinds.includes('temperatureDifference'))) expect(u.offset, u.name).toBe(0)
    expect(si('temperatureDifference', 'Δ°F', 9)).toBeCloseTo(5, 12)
  })
})

test('every unit stands for kinds of one dimension, and every kind shows units that exist', () => {
  for (const u of units) for (const kind of u.kinds) expect(kinds[kind].dim, `${u.name} as ${kind}`).toEqual(dimOf(u))
  for (const [name, kind] of Object.entries(kinds)) for (const shown of [kind.metric, kind.imperial]) expect(unitOf(name as Kind, shown).kinds).toContain(name)
})
test('no spelling means two sizes of one kind', () => {
  for (const u of units) for (const spelling of [u.name, ...u.also]) for (const kind of u.kinds) {
    const meant = unitsNamed(spelling).filter((x) => x.kinds.includes(kind))
    expect(new Set(meant.map((x) => x.factor)).size, `${spelling} as ${kind}`).toBe(1)
    expect(meant[0]!.factor, `${spelling} as ${kind}`).toBe(u.factor)
  }
})
test('an unknown unit of a kind is a mistake of ours and throws', () => expect(() => unitOf('length', 'furlong')).toThrow('no unit furlong of length'))

describe('spelling', () => {
  test.each([['N·m', 'torque'], ['N m', 'torque'], ['Nm', 'torque'], ['nm', 'torque'], ['cm^2', 'area'], ['cm2', 'area'], ['CM²', 'area'], ['KPA', 'pressureDifference'], ['Bar', 'gaugePressure'], ['RPM', 'shaftSpeed'], ['L / h', 'volumeFlow'], ['CC/MIN', 'volumeFlow'], ['MM', 'length'], ['MBAR', 'pressureDifference']] as const)('%s is found', (spelling, kind) => {
    expect(unitsNamed(spelling).some((u) => u.kinds.includes(kind))).toBe(true)
  })
  test.each(['MH', 'MA', 'MV', 'mpa', 'MS', 'Mm', 'Mbar', 'MΩ', 'Mg'])('%s is not taken for another size', (spelling) => expect(unitsNamed(spelling)).toEqual([]))
  test('milli and mega that both exist are kept apart', () => {
    expect(unitsNamed('mJ')[0]!.factor).toBe(1e-3)
    expect(unitsNamed('MJ')[0]!.factor).toBe(1e6)
    expect(unitsNamed('MPa')[0]!.factor).toBe(1e6)
  })
})
