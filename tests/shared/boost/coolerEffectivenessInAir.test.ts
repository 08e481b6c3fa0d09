import { expect, test } from 'vitest'
import { airOverCooler } from '@trochoid/compute/boost/airOverCooler.ts'
import { coolerEffectiveness } from '@trochoid/compute/boost/coolerEffectiveness.ts'
import { coolerEffectivenessInAir } from '@trochoid/compute/boost/coolerEffectivenessInAir.ts'
import { coolerUnitsFrom } from '@trochoid/compute/boost/coolerUnitsFrom.ts'

const rating = { ratedFlow: 0.4, ratedAir: 1.6 }
const units = coolerUnitsFrom({ effectiveness: 0.72, flow: 0.4, air: 1.6 })
const at = (flow: number, air: number) => coolerEffectivenessInAir({ ...rating, units, flow, air })

test('less cooling air and more charge each lower it, without a step where the weaker stream changes', () => {
  for (const flow of [0.1, 0.3, 0.6]) for (const air of [0.2, 0.5, 1, 2]) {
    expect(at(flow, air)).toBeGreaterThan(at(flow * 1.05, air))
    expect(at(flow, air)).toBeLessThan(at(flow, air * 1.05))
    expect(at(flow, air)).toBeLessThanOrEqual(Math.min(1, air / flow))
  }
  expect(at(0.5, 0.5 * (1 + 1e-9)) - at(0.5, 0.5 * (1 - 1e-9))).toBeCloseTo(0, 6)
})
test('with plentiful cooling air it falls over charge flow as the form without cooling air does near the rating', () => {
  const plenty = coolerUnitsFrom({ effectiveness: 0.72, flow: 0.4, air: 1e4 })
  for (const flow of [0.36, 0.4, 0.44]) {
    const own = coolerEffectivenessInAir({ units: plenty, flow, ratedFlow: 0.4, air: 1e4, ratedAir: 1e4 })
    expect(own).toBeCloseTo(coolerEffectiveness({ flow, ratedFlow: 0.4, ratedEffectiveness: 0.72 }), 3)
  }
})
test('half the face meets half the air', () => expect(airOverCooler({ air: 2, coverage: 0.5 })).toBe(1))
