import fc from 'fast-check'
import { expect, test } from 'vitest'
import { actualFlow } from '@trochoid/compute/boost/actualFlow.ts'
import { bendLoss } from '@trochoid/compute/boost/bendLoss.ts'
import { capacityOfAll } from '@trochoid/compute/boost/capacityOfAll.ts'
import { coefficientSum } from '@trochoid/compute/boost/coefficientSum.ts'
import { compressorEfficiencyFrom } from '@trochoid/compute/boost/compressorEfficiencyFrom.ts'
import { compressorOutletTemperature } from '@trochoid/compute/boost/compressorOutletTemperature.ts'
import { correctedFlow } from '@trochoid/compute/boost/correctedFlow.ts'
import { ductCoefficient } from '@trochoid/compute/boost/ductCoefficient.ts'
import { ductReynolds } from '@trochoid/compute/boost/ductReynolds.ts'
import { ductRoughness } from '@trochoid/compute/boost/ductRoughness.ts'
import { ductSpeed } from '@trochoid/compute/boost/ductSpeed.ts'
import { expansionOfHotMaterial } from '@trochoid/compute/boost/expansionOfHotMaterial.ts'
import { faceAreaFor } from '@trochoid/compute/boost/faceAreaFor.ts'
import { faceSpeed } from '@trochoid/compute/boost/faceSpeed.ts'
import { filterLoss } from '@trochoid/compute/boost/filterLoss.ts'
import { flowOfAll } from '@trochoid/compute/boost/flowOfAll.ts'
import { flowOfOne } from '@trochoid/compute/boost/flowOfOne.ts'
import { flowPressureLoss } from '@trochoid/compute/boost/flowPressureLoss.ts'
import { hotGrowth } from '@trochoid/compute/boost/hotGrowth.ts'
import { slipOfFlange } from '@trochoid/compute/boost/slipOfFlange.ts'

test('the loss of a duct is so many velocity heads of the speed in it', () => {
  fc.assert(fc.property(fc.double({ min: 0.03, max: 0.12, noNaN: true }), fc.double({ min: 0.05, max: 0.6, noNaN: true }), fc.double({ min: 0.4, max: 3, noNaN: true }), (bore, flow, density) => {
    const coefficient = ductCoefficient({ bore, length: 1.2, friction: 0.02, bends: 3, bend: 0.25, others: 1 })
    const head = (density * ductSpeed({ flow, density, bore }) ** 2) / 2
    expect(flowPressureLoss({ coefficient, flow, density }) / (head * ((0.02 * 1.2) / bore + 3 * 0.25 + 1))).toBeCloseTo(1, 9)
  }))
})
test('a tighter bend, a longer bend and a rougher wall each lose more; no bend loses nothing', () => {
  const of = (radius: number, angle: number, friction: number) => bendLoss({ radius, angle, friction })
  expect(of(1, 1.5, 0.02)).toBeGreaterThan(of(2, 1.5, 0.02))
  expect(of(1.5, 1.5, 0.02)).toBeGreaterThan(of(1.5, 0.8, 0.02))
  expect(of(1.5, 1.5, 0.03)).toBeGreaterThan(of(1.5, 1.5, 0.02))
  expect(of(1.5, 0, 0.02)).toBe(0)
})
test('Reynolds number and roughness are those of the bore', () => {
  const [flow, bore, density, viscosity] = [0.3, 0.063, 2.2, 2e-5]
  expect(ductReynolds({ flow, bore, viscosity }) / ((density * ductSpeed({ flow, density, bore }) * bore) / viscosity)).toBeCloseTo(1, 12)
  expect(ductRoughness({ roughness: 1e-5, bore: 0.05 })).toBeCloseTo(2e-4, 12)
  expect(coefficientSum({ first: 1e4, second: 2e4 })).toBe(3e4)
})
test('the filter area that is found has the loss that was accepted', () => {
  fc.assert(fc.property(fc.double({ min: 0.05, max: 0.6, noNaN: true }), fc.double({ min: 300, max: 5000, noNaN: true }), fc.double({ min: 1, max: 2, noNaN: true }), (flow, accepted, exponent) => {
    const area = faceAreaFor({ area: 0.08, flow, measuredFlow: 0.2, measured: 1500, accepted, exponent })
    // Through that area the flow counts as if so much less went through the filter that was measured.
    expect(filterLoss({ flow: (flow * 0.08) / area, measuredFlow: 0.2, measured: 1500, exponent }) / accepted).toBeCloseTo(1, 9)
  }))
  expect(faceSpeed({ flow: 0.12, density: 1.2, area: 0.1 })).toBeCloseTo(1, 12)
})
test('efficiency read from the temperature that it makes is that efficiency', () => {
  fc.assert(fc.property(fc.double({ min: 1.1, max: 4, noNaN: true }), fc.double({ min: 0.4, max: 0.85, noNaN: true }), (ratio, efficiency) => {
    const outletTemperature = compressorOutletTemperature({ inletTemperature: 300, ratio, efficiency })
    expect(compressorEfficiencyFrom({ inletTemperature: 300, outletTemperature, ratio })).toBeCloseTo(efficiency, 9)
  }))
})
test('corrected flow and flow turn each other round; two turbochargers halve and double', () => {
  const at = { temperature: 308, pressure: 92e3, referenceTemperature: 298.15, referencePressure: 1e5 }
  expect(correctedFlow({ ...at, flow: actualFlow({ ...at, corrected: 0.3 }) })).toBeCloseTo(0.3, 12)
  expect(flowOfAll({ flow: flowOfOne({ flow: 0.37, turbos: 2 }), turbos: 2 })).toBeCloseTo(0.37, 12)
  expect(capacityOfAll({ each: 0.13, turbos: 2 })).toBeCloseTo(0.26, 12)
})
test('a part fitted hot has not grown; austenitic steels grow half as much again as ferritic ones', () => {
  expect(hotGrowth({ length: 0.3, expansion: 18e-6, hot: 300, cold: 300 })).toBe(0)
  expect(slipOfFlange({ flange: 2e-3, engine: 0.4e-3 })).toBeCloseTo(0.8e-3, 12)
  expect(expansionOfHotMaterial({ material: 'stainless-321' }) / expansionOfHotMaterial({ material: 'ferritic-409' })).toBeGreaterThan(1.4)
})
