import { expect, test } from 'vitest'
import { boostResponse } from '@trochoid/compute/boost/boostResponse.ts'
import { shareOfBoost } from '@trochoid/compute/boost/shareOfBoost.ts'
import { manifoldAtBoost } from '@trochoid/compute/boost/manifoldAtBoost.ts'
import { largeMap } from '@trochoid/compute/data/maps/large.ts'
import { smallMap } from '@trochoid/compute/data/maps/small.ts'
import { curve, engine, onMap, rpm } from './engineAt.ts'

const wanted = manifoldAtBoost({ boost: shareOfBoost({ boost: 1e5, share: 0.9 }), outside: engine.outside })
const at = (more = {}) => boostResponse({ ...engine, ...onMap, curve, wanted, shaft: 4500 * rpm, climb: 0, start: 35000 * rpm, inertia: 9e-5, ...more })

test('at a held shaft speed time goes with inertia', () => {
  const base = at()
  expect(base.time).toBeGreaterThan(0.1)
  expect(base.time).toBeLessThan(5)
  expect(at({ inertia: 18e-5 }).time / base.time).toBeCloseTo(2, 2)
  expect(base.shaftThen).toBe(4500 * rpm)
})
test('more shaft speed, a faster wheel to begin with and hotter gas each bring it sooner', () => {
  const base = at().time
  for (const more of [{ shaft: 5500 * rpm }, { start: 60000 * rpm }, { turbineTemperature: 1250 }, { climb: 100 }]) expect(at(more).time, JSON.stringify(more)).toBeLessThan(base)
})
test('a small turbocharger is there before a large one at the same engine', () => {
  const small = at({ map: smallMap, inertia: 4e-5, flowCapacity: 0.19 }).time
  const large = at({ map: largeMap, inertia: 22e-5, flowCapacity: 0.32 }).time
  expect(small).toBeLessThan(large / 2)
})
test('two turbochargers of half the flow and a third of the inertia each are quicker than the one', () => {
  const { map } = onMap
  const halved = { ...map, lines: map.lines.map((line) => ({ ...line, flow: line.flow.map((m) => m / 2) })) }
  const twin = at({ map: halved, turbos: 2, inertia: 3e-5 })
  expect(twin.time / at().time).toBeCloseTo(2 / 3, 2)
})
test('what is there already, and what never comes, is said in words', () => {
  expect(() => at({ start: 130000 * rpm })).toThrow(/before the throttle/)
  expect(() => at({ shaft: 1500 * rpm })).toThrow(/does not come/)
})
