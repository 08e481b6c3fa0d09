import { expect, test } from 'vitest'
import { coolerAirAt } from '@trochoid/compute/oil/coolerAirAt.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

test('at sea level it is what was given; it falls as the pressure does', () => {
  expect(coolerAirAt({ air: 0.8, outside: 101325 })).toBeCloseTo(0.8, 12)
  expect(coolerAirAt({ air: 0.8, outside: 101325 / 2 })).toBeCloseTo(0.4, 12)
})
test('in thin air the oil warms more for the heat it carries, as the coolant does', () => {
  const air = 298.15
  const at = (airPressure: number) => solveBuild(setEntry(setEntry(builds.street, 'site.airTemperature', { value: air }), 'site.airPressure', { value: airPressure }), [730]).points[0]!.values
  const rise = (v: Readonly<Record<string, number>>) => (v['oil.temperature']! - air) / v['cooling.oilHeat']!
  expect(rise(at(84300))).toBeGreaterThan(rise(at(101325)))
})
