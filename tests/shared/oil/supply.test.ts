import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { balancedPressure } from '@trochoid/compute/oil/balancedPressure.ts'
import { jetFlow } from '@trochoid/compute/oil/jetFlow.ts'
import { leakageFlow } from '@trochoid/compute/oil/leakageFlow.ts'
import { meteredDelivery } from '@trochoid/compute/oil/meteredDelivery.ts'
import { leakageByReading } from '@trochoid/compute/oil/leakageByReading.ts'
import { premixDose } from '@trochoid/compute/oil/premixDose.ts'
import { pumpDelivery } from '@trochoid/compute/oil/pumpDelivery.ts'
import { pumpSlip } from '@trochoid/compute/oil/pumpSlip.ts'
import { relievedPressure } from '@trochoid/compute/oil/relievedPressure.ts'
import { cooledOilTemperature } from '@trochoid/compute/oil/cooledOilTemperature.ts'
import { heldByThermostat } from '@trochoid/compute/oil/heldByThermostat.ts'
import { oilCoolerConductance } from '@trochoid/compute/oil/oilCoolerConductance.ts'

const now = { leakage: 3e-14, viscosity: 0.012, area: 8e-6, coefficient: 0.75, density: 820 }

describe('the balance of oil', () => {
  test('what the pump gives is what gaps and holes take', () => {
    fc.assert(fc.property(fc.double({ min: 1e-5, max: 2e-3, noNaN: true }), (ideal) => {
      const pressure = balancedPressure({ ...now, ideal })
      const taken = leakageFlow({ factor: now.leakage, drop: pressure as number, viscosity: now.viscosity }) + jetFlow({ area: now.area, coefficient: now.coefficient, drop: pressure as number, density: now.density })
      expect(taken / ideal).toBeCloseTo(1, 9)
    }))
  })
  test('gaps alone and holes alone are limits of it', () => {
    expect(balancedPressure({ ...now, area: 0, ideal: 1e-4 })).toBeCloseTo((1e-4 * 0.012) / 3e-14, 0)
    expect(balancedPressure({ ...now, leakage: 0, ideal: 1e-4 })).toBeCloseTo((820 / 2) * (1e-4 / (0.75 * 8e-6)) ** 2, 4)
  })
  test('hotter oil, a wider gap or a larger jet lowers the pressure; more speed raises it', () => {
    const p = balancedPressure({ ...now, ideal: 2e-4 })
    expect(balancedPressure({ ...now, viscosity: 0.008, ideal: 2e-4 })).toBeLessThan(p)
    expect(balancedPressure({ ...now, leakage: 6e-14, ideal: 2e-4 })).toBeLessThan(p)
    expect(balancedPressure({ ...now, area: 9e-6, ideal: 2e-4 })).toBeLessThan(p)
    expect(balancedPressure({ ...now, ideal: 2.2e-4 })).toBeGreaterThan(p)
  })
})

test('slip gives the pump the efficiency it was rated with', () => {
  const ideal = pumpDelivery({ perTurn: 11e-6, ratio: 1, speed: 420, efficiency: 1 })
  const factor = pumpSlip({ ideal, efficiency: 0.88, viscosity: 0.012, pressure: 5e5 })
  expect(ideal - leakageFlow({ factor, drop: 5e5, viscosity: 0.012 })).toBeCloseTo(pumpDelivery({ perTurn: 11e-6, ratio: 1, speed: 420, efficiency: 0.88 }), 12)
})
test('a relief valve only ever lowers', () => {
  expect(relievedPressure({ pressure: 9e5, setting: 5.5e5 })).toBe(5.5e5)
  expect(relievedPressure({ pressure: 2e5, setting: 5.5e5 })).toBe(2e5)
})
test('the leakage of a reading gives that reading back', () => {
  const known = { ideal: 1e-3, viscosity: 0.01, area: 8e-6, coefficient: 0.75, density: 820 }
  for (const reading of [1e5, 3.2e5, 5e5]) expect(balancedPressure({ ...known, leakage: leakageByReading({ ...known, reading }) })).toBeCloseTo(reading, 3)
  expect(leakageByReading({ ...known, area: 1, reading: 3e5 })).toBe(0)
})

describe('doses', () => {
  const pump = { atRest: 0.4e-9, full: 1.4e-9, idle: 45e3, open: 101e3 }
  test('at rest at idle and below, full at outside pressure and under boost, between in between', () => {
    expect(meteredDelivery({ ...pump, manifold: 30e3 })).toBe(0.4e-9)
    expect(meteredDelivery({ ...pump, manifold: 45e3 })).toBe(0.4e-9)
    expect(meteredDelivery({ ...pump, manifold: 73e3 })).toBeCloseTo(0.9e-9, 15)
    expect(meteredDelivery({ ...pump, manifold: 101e3 })).toBeCloseTo(1.4e-9, 15)
    expect(meteredDelivery({ ...pump, manifold: 200e3 })).toBeCloseTo(1.4e-9, 15)
  })
  test('premix in a turn: twice the speed on the same fuel halves it, no fuel gives none', () => {
    expect(premixDose({ oil: 1e-4, speed: 2 * Math.PI * 100 })).toBeCloseTo(1e-6, 15)
    expect(premixDose({ oil: 0, speed: 500 })).toBe(0)
  })
})

describe('oil heat', () => {
  const cooler = { air: 298.15, heat: 25e3, effectiveness: 0.45, oilRate: 1800, airRate: 800 }
  test('without heat the oil is as the air', () => expect(cooledOilTemperature({ ...cooler, heat: 0 })).toBe(298.15))
  test('energy closes: oil in less oil out carries the heat, and effectiveness is its share of the possible', () => {
    const out = cooledOilTemperature(cooler)
    const inlet = out + 25e3 / 1800
    expect(25e3 / (800 * (inlet - 298.15))).toBeCloseTo(0.45, 10)
  })
  test('the weaker stream may be the oil', () => {
    const out = cooledOilTemperature({ ...cooler, oilRate: 500 })
    expect(25e3 / (500 * (out + 50 - 298.15))).toBeCloseTo(0.45, 10)
  })
  test('a thermostat only ever warms', () => {
    expect(heldByThermostat({ cooled: 330, opens: 353 })).toBe(353)
    expect(heldByThermostat({ cooled: 370, opens: 353 })).toBe(370)
  })
  test('at its rated flows a cooler has its rated conductance, whichever side matters', () => {
    const rated = { rated: 400, air: 0.8, ratedAir: 0.8, airExponent: 0.6, oil: 1e-3, ratedOil: 1e-3, oilExponent: 0.4 }
    for (const airShare of [0.2, 0.5, 0.9]) expect(oilCoolerConductance({ ...rated, airShare })).toBeCloseTo(400, 9)
    expect(oilCoolerConductance({ ...rated, airShare: 1, air: 1.6 })).toBeCloseTo(400 * 2 ** 0.6, 9)
    expect(oilCoolerConductance({ ...rated, airShare: 0, oil: 2e-3 })).toBeCloseTo(400 * 2 ** 0.4, 9)
  })
})
