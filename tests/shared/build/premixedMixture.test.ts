import { expect, test } from 'vitest'
import { setEntry, type Sheet } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { street } from '@trochoid/compute/data/builds/street.ts'

const premixed = (share: number, by = 'premixed'): Sheet => setEntry(setEntry(street, 'oil.sealOiling', { value: by }), 'fuel.premix.share', { value: share })
const at = (sheet: Sheet) => solveBuild(sheet, [500]).points[0]!.values

test('premixed oil burns with the fuel: at the same lambda its mass flow goes with the ratio of the mixture', () => {
  const none = at(premixed(0)), some = at(premixed(0.02))
  // At 1 in 50 oil is 2.3 % of the mass, and asks a little more air than petrol with 5 % ethanol.
  expect(some['fuel.massFlow']! / none['fuel.massFlow']!).toBeLessThan(1)
  expect(some['fuel.massFlow']! / none['fuel.massFlow']!).toBeGreaterThan(0.998)
  expect(some['engine.power']! / none['engine.power']!).toBeCloseTo(1, 2)
  expect(some['fuel.premixOilFlow']! / some['fuel.massFlow']!).toBeCloseTo((0.02 * 870) / (some['fuel.density']! + 0.02 * 870), 6)
})
test('a metering pump alone leaves the fuel as it is, whatever share stands in the sheet', () => {
  expect(at(premixed(0.03, 'metered'))['fuel.massFlow']).toBe(at(premixed(0, 'metered'))['fuel.massFlow'])
})
test('mass and energy close with oil in the fuel', () => {
  for (const value of Object.values(solveBuild(premixed(0.04), [400, 700]).points[0]!.residuals)) expect(Math.abs(value)).toBeLessThan(1e-6)
})
