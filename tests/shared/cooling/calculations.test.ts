import { describe, expect, test } from 'vitest'
import { NoAnswer, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { startValues } from '@trochoid/compute/calculation/samples.ts'
import boilMargin from '@trochoid/compute/cooling/boilMargin.calc.ts'
import coolantHeatMeasured from '@trochoid/compute/cooling/coolantHeatMeasured.calc.ts'
import coolantMixture from '@trochoid/compute/cooling/coolantMixture.calc.ts'
import coolantTemperature from '@trochoid/compute/cooling/coolantTemperature.calc.ts'
import coolerSize from '@trochoid/compute/cooling/coolerSize.calc.ts'
import coolingAir from '@trochoid/compute/cooling/coolingAir.calc.ts'
import effectivenessNtu from '@trochoid/compute/cooling/effectivenessNtu.calc.ts'
import heatBalance from '@trochoid/compute/cooling/heatBalance.calc.ts'
import radiatorFromRatedPoint from '@trochoid/compute/cooling/radiatorFromRatedPoint.calc.ts'
import spacerConduction from '@trochoid/compute/cooling/spacerConduction.calc.ts'
import surfaceLoss from '@trochoid/compute/cooling/surfaceLoss.calc.ts'
import { coverage, fanFreeFlow, fanShutOff, glycol, pumpFlow, radiatorHeat, ramRecovery, capPressure } from '@trochoid/compute/cooling/fields.ts'

const ask = (of: AnyCalculation, given: Values = {}): Record<string, number> => ({ ...of.answer({ ...startValues(of), ...given }) })
const says = (of: AnyCalculation, given: Values = {}): string => { const x = { ...startValues(of), ...given }; return of.says({ ...x, ...of.answer(x) }) }

/** Air, coolant and boiling one after the other, as the solved point runs them. */
function chain(change: Values = {}): { air: number; airTemperature: number; temperature: number; boiling: number; margin: number; flow: number } {
  const point = { chargeCooler: 25e3, coolantHeat: 190e3, speed: 800, temperature: 298.15, pressure: 101325 }
  const air = ask(coolingAir, { ...point, ...change })
  const coolant = ask(coolantTemperature, { ...point, ...change, air: air['air'], airTemperature: air['airTemperature'] })
  const boil = ask(boilMargin, { outside: 101325, ...change, coolant: coolant['temperature'] })
  return { air: air['air']!, airTemperature: air['airTemperature']!, temperature: coolant['temperature']!, flow: coolant['flow']!, boiling: boil['boiling']!, margin: boil['margin']! }
}

describe('the links of the chain', () => {
  const here = chain()
  test('land where such a car does: coolant between thermostat and boiling, air warmed by a few kelvin', () => {
    expect(here.temperature).toBeGreaterThan(365)
    expect(here.temperature).toBeLessThan(here.boiling)
    expect(here.airTemperature).toBeGreaterThan(300)
    expect(here.airTemperature).toBeLessThan(310)
    expect(here.margin).toBeCloseTo(here.boiling - here.temperature, 9)
  })
  test('each remedy of its margins moves the right way', () => {
    expect(chain({ ratedHeat: radiatorHeat.start! * 1.1 }).temperature).toBeLessThan(here.temperature)
    expect(chain({ ramRecovery: ramRecovery.start! * 1.2 }).temperature).toBeLessThan(here.temperature)
    expect(chain({ pumpFlow: pumpFlow.start! * 1.2 }).temperature).toBeLessThan(here.temperature)
    expect(chain({ cap: capPressure.start! + 2e4 }).margin).toBeGreaterThan(here.margin)
    expect(chain({ ratedHeat: radiatorHeat.start! * 1.1 }).margin).toBeGreaterThan(here.margin)
  })
  test('a hot day, altitude, a slow car and a pump at half speed each take from it', () => {
    expect(chain({ temperature: 313.15 }).temperature).toBeGreaterThan(here.temperature + 14)
    expect(chain({ outside: 80e3 }).boiling).toBeLessThan(here.boiling - 2)
    expect(chain({ carSpeed: 15, coolantHeat: 14e4 }).temperature).toBeGreaterThan(chain({ coolantHeat: 14e4 }).temperature + 5)
    expect(chain({ speed: 400, coolantHeat: 8e4 }).flow).toBeCloseTo(here.flow / 2, 12)
    expect(chain({ speed: 400, coolantHeat: 8e4 }).temperature).toBeGreaterThan(chain({ coolantHeat: 8e4 }).temperature)
  })
  test('thin air passes in smaller mass', () => expect(chain({ pressure: 80e3 }).air).toBeLessThan(here.air * 0.95))
  test('half the sustained load, about half the rise above the air once the thermostat is open', () => {
    const full = chain({ share: 0.6 }), half = chain({ share: 0.5 })
    expect((half.temperature - half.airTemperature) / (full.temperature - full.airTemperature)).toBeCloseTo(5 / 6, 2)
  })
  test('a charge cooler standing beside neither warms the air nor holds it back', () => {
    const apart = chain({ coverage: 0 })
    expect(apart.airTemperature).toBe(298.15)
    expect(apart.air).toBeGreaterThan(here.air)
    expect(coverage.start).toBe(1)
  })
  test('at standstill the fan still moves air, and without it nothing does', () => {
    expect(ask(coolingAir, { carSpeed: 0, temperature: 298.15, pressure: 101325 })['air']).toBeLessThan(fanFreeFlow.start! * 1.3)
    expect(() => chain({ carSpeed: 0, shutOff: 0 })).toThrow(NoAnswer)
    expect(fanShutOff.start).toBeGreaterThan(0)
  })
})

describe('what they say', () => {
  test('less air than rated is told', () => {
    expect(says(coolingAir, { carSpeed: 5 })).toContain('only {air}')
    expect(says(coolingAir, { carSpeed: 60 })).not.toContain('only')
  })
  test('the thermostat’s room is told', () => {
    const point = { speed: 700, air: 1.8, airTemperature: 305 }
    expect(says(coolantTemperature, { ...point, coolantHeat: 5e4 })).toContain('has room')
    expect(says(coolantTemperature, { ...point, coolantHeat: 22e4 })).toContain('fully open')
  })
  test('boiling is told', () => {
    expect(says(boilMargin, { coolant: 500 })).toContain('is there already')
    expect(says(boilMargin, { coolant: 370 })).toContain('stands {margin} below')
  })
  test('thin mixture, large cooler, bolts and radiation are told', () => {
    expect(says(coolantMixture, { glycol: 0.1 })).toContain('rust')
    expect(says(coolantMixture, { glycol: glycol.start })).not.toContain('rust')
    expect(says(effectivenessNtu, { conductance: 9000 })).toContain('hardly add')
    expect(says(effectivenessNtu)).not.toContain('hardly')
    expect(says(spacerConduction)).toContain('go around it')
    expect(says(spacerConduction, { boltArea: 0 })).not.toContain('go around')
    expect(says(surfaceLoss)).toContain('most of it radiated')
    expect(says(surfaceLoss, { emissivity: 0.05, surface: 400 })).toContain('carried off by air')
  })
})

describe('the free calculators', () => {
  test('a cooler: both streams agree on the heat, and its inverse gives the conductance back in counter flow', () => {
    const x = { arrangement: 'counter', hotRate: 3000, coldRate: 2000, hotIn: 380, coldIn: 300, conductance: 2500 }
    const y = ask(effectivenessNtu, x)
    expect(3000 * (380 - y['hotOut']!)).toBeCloseTo(y['heat']!, 6)
    expect(2000 * (y['coldOut']! - 300)).toBeCloseTo(y['heat']!, 6)
    expect(ask(coolerSize, { heat: y['heat'], hotIn: 380, hotOut: y['hotOut'], coldIn: 300, coldOut: y['coldOut'] })['conductance']).toBeCloseTo(2500, 6)
  })
  test('heat does not flow uphill', () => {
    expect(() => ask(coolerSize, { hotIn: 350, coldOut: 350 })).toThrow(NoAnswer)
    expect(() => ask(coolerSize, { hotOut: 350, coldIn: 350 })).toThrow('from cold to hot')
  })
  test('a radiator at its rating', () => {
    const s = startValues(radiatorFromRatedPoint)
    const y = ask(radiatorFromRatedPoint, { air: s['ratedAir'], airTemperature: s['ratedAirTemperature'], coolant: s['ratedCoolant'], temperature: s['ratedCoolantTemperature'] })
    expect(y['heat']).toBeCloseTo(s['ratedHeat'] as number, 4)
    expect(y['conductanceHere']).toBeCloseTo(y['conductance']!, 8)
  })
  test('shares of the balance add to all, and the gap is what is missing', () => {
    const y = ask(heatBalance, { fuelPower: 1e6, brake: 230e3, coolant: 150e3, oil: 60e3, surface: 20e3, exhaust: 330e3, unburned: 200e3, air: 0.3, charge: 298.15 })
    expect(['brakeShare', 'coolantShare', 'oilShare', 'surfaceShare', 'exhaustShare', 'unburnedShare'].reduce((sum, name) => sum + y[name]!, 0)).toBeCloseTo(0.99, 12)
    expect(y['gap']).toBeCloseTo(10e3, 6)
  })
  test('one steady run gives back the share it came from', () => {
    const y = ask(coolantHeatMeasured, { fuelPower: 1e6, unburned: 2e5 })
    expect(y['share']).toBeCloseTo(y['heat']! / 8e5, 12)
  })
  test('twice the thickness of a poor conductor nearly halves its heat, but only halves that of the bolts', () => {
    const thin = ask(spacerConduction), thick = ask(spacerConduction, { thickness: 0.02 })
    expect(thick['bolts']).toBeCloseTo(thin['bolts']! / 2, 9)
    expect(thick['through']! / thin['through']!).toBeGreaterThan(0.5)
    expect(thick['through']! / thin['through']!).toBeLessThan(0.52)
    expect(thin['heat']).toBeCloseTo(thin['bolts']! + thin['through']!, 9)
  })
  test('a surface at the temperature around it gives nothing', () => {
    expect(ask(surfaceLoss, { surface: 298.15, around: 298.15 })).toEqual({ radiated: 0, convected: 0, heat: 0 })
  })
})
