import { gaugeBoost } from '../boost/gaugeBoost.ts'
import { exhaustHeatBand } from '../cooling/exhaustHeatBand.ts'
import { specificEnthalpyOf } from '../cooling/specificEnthalpyOf.ts'
import { unburnedHeat } from '../cooling/unburnedHeat.ts'
import { actualSpeed } from '../boost/actualSpeed.ts'
import { fuelPerCharge } from '../engine/fuelPerCharge.ts'
import { shaftTorque } from '../engine/shaftTorque.ts'
import { airEnthalpyRise } from '../media/airEnthalpyRise.ts'
import { exhaustTemperature } from '../media/exhaustTemperature.ts'
import { exhaustEnthalpy } from '../media/exhaustEnthalpy.ts'
import { reference, type State } from './core.ts'
import { type Outcome } from './regimes.ts'
import { type Given } from './given.ts'

/** What wastegate and actuator are asked for, by path: the point as it would be if they did it. */
export const askedOf = (b: Given, asked: State) => ({
  'boost.asked': gaugeBoost({ manifold: asked.pipe, outside: b.airPressure }), 'boost.inletPressureAsked': asked.before, 'boost.outletPressureAsked': asked.after,
  'cooling.exhaustTemperatureAsked': asked.beforeTemperature, 'boost.wastegateAsked': Math.max(0, asked.bypass), 'boost.exhaustFlowAsked': asked.exhaust,
})

/** The core's answers by path: what the links of the chain, the margins and the pages read. */
export function valuesOf(b: Given, { state: s, asked }: Outcome) {
  const band = exhaustHeatBand({ heat: s.leaving, fuelPower: s.chemical, band: b.exhaustBand })
  const temperature = (heat: number): number => exhaustTemperature({ enthalpy: specificEnthalpyOf({ heat, flow: s.exhaust }) })
  return {
    ...askedOf(b, asked),
    'engine.speed': s.speed, 'engine.manifoldPressure': s.manifold, 'engine.chargeTemperature': s.charge, 'engine.airFlow': s.air,
    'engine.volumetricEfficiency': s.ve, 'engine.lambda': s.lambda, 'engine.power': s.brake, 'engine.torque': shaftTorque({ power: s.brake, speed: s.speed }),
    'engine.backPressureRatio': s.ratio, 'engine.throttleInletPressure': s.pipe,
    'boost.compressorInletPressure': s.inlet, 'boost.compressorOutletPressure': s.outlet, 'boost.compressorOutletTemperature': s.outletTemperature,
    'boost.pressureRatio': s.compressorRatio, 'boost.correctedFlow': s.corrected, 'boost.compressorEfficiency': s.place.efficiency, 'boost.compressorPower': s.compressor,
    'boost.compressorSpeed': actualSpeed({ corrected: s.place.speed, temperature: b.airTemperature, referenceTemperature: b.map.referenceTemperature }),
    'boost.turbineInletPressure': s.before, 'boost.turbineOutletPressure': s.after, 'boost.turbineFlow': s.throughTurbine, 'boost.wastegateFlow': Math.max(0, s.bypass),
    'boost.exhaustFlow': s.exhaust, 'boost.boost': gaugeBoost({ manifold: s.manifold, outside: b.airPressure }),
    'fuel.massFlow': s.fuel, 'fuel.fuelPerCharge': fuelPerCharge({ fuelFlow: s.fuel, rotors: b.rotors, speed: s.speed }),
    'cooling.fuelPower': s.chemical, 'cooling.coolantHeat': s.coolant, 'cooling.oilHeat': s.oil, 'cooling.surfaceHeat': s.surface, 'cooling.exhaustHeat': s.leaving,
    'cooling.unburnedHeat': unburnedHeat({ fuelPower: s.chemical, releasedShare: s.share }),
    'cooling.chargeCoolerHeat': airEnthalpyRise({ flow: s.air, from: s.charge, to: s.outletTemperature }),
    'cooling.airEnthalpy': airEnthalpyRise({ flow: s.air, from: reference, to: b.airTemperature }), 'cooling.chargeEnthalpy': s.chargeEnthalpy,
    'cooling.tailpipeHeat': tailpipeHeat(s), 'cooling.turboBearingLoss': s.turbine - s.delivered,
    'cooling.exhaustTemperature': s.beforeTemperature, 'cooling.exhaustTemperatureLow': temperature(band.low), 'cooling.exhaustTemperatureHigh': temperature(band.high),
  }
}

/** Paths that only the core makes. */
export const corePointPaths: readonly (keyof ReturnType<typeof valuesOf>)[] = [
  'engine.speed', 'engine.manifoldPressure', 'engine.chargeTemperature', 'engine.airFlow', 'engine.volumetricEfficiency', 'engine.lambda', 'engine.power', 'engine.torque', 'engine.backPressureRatio', 'engine.throttleInletPressure',
  'boost.asked', 'boost.inletPressureAsked', 'boost.outletPressureAsked', 'cooling.exhaustTemperatureAsked', 'boost.wastegateAsked', 'boost.exhaustFlowAsked',
  'boost.compressorInletPressure', 'boost.compressorOutletPressure', 'boost.compressorOutletTemperature', 'boost.pressureRatio', 'boost.correctedFlow', 'boost.compressorEfficiency',
  'boost.compressorPower', 'boost.compressorSpeed', 'boost.turbineInletPressure', 'boost.turbineOutletPressure', 'boost.turbineFlow', 'boost.wastegateFlow', 'boost.exhaustFlow', 'boost.boost',
  'fuel.massFlow', 'fuel.fuelPerCharge', 'cooling.fuelPower', 'cooling.coolantHeat', 'cooling.oilHeat', 'cooling.surfaceHeat', 'cooling.exhaustHeat', 'cooling.unburnedHeat',
  'cooling.chargeCoolerHeat', 'cooling.airEnthalpy', 'cooling.chargeEnthalpy', 'cooling.tailpipeHeat', 'cooling.turboBearingLoss', 'cooling.exhaustTemperature', 'cooling.exhaustTemperatureLow', 'cooling.exhaustTemperatureHigh',
]

/**
 * The balances that must close, by path of the point: what goes in and what comes out. The engine's ends at its ports, the car's at air
 * filter and tailpipe. The exhaust heat is the remainder of the engine's; the car's is summed anew from the ends of every path, so that it
 * closes only if the chain of temperatures and flows is right.
 */
export const balances = {
  massEngine: { in: ['engine.airFlow', 'fuel.massFlow'], out: ['boost.exhaustFlow'] },
  massTurbine: { in: ['boost.exhaustFlow'], out: ['boost.turbineFlow', 'boost.wastegateFlow'] },
  energyEngine: { in: ['cooling.fuelPower', 'cooling.chargeEnthalpy'], out: ['engine.power', 'cooling.coolantHeat', 'cooling.oilHeat', 'cooling.surfaceHeat', 'cooling.unburnedHeat', 'cooling.exhaustHeat'] },
  energyCar: {
    in: ['cooling.fuelPower', 'cooling.airEnthalpy'],
    out: ['engine.power', 'cooling.coolantHeat', 'cooling.oilHeat', 'cooling.surfaceHeat', 'cooling.unburnedHeat', 'cooling.chargeCoolerHeat', 'cooling.turboBearingLoss', 'cooling.tailpipeHeat'],
  },
} as const satisfies Readonly<Record<string, { readonly in: readonly CorePath[]; readonly out: readonly CorePath[] }>>
type CorePath = keyof ReturnType<typeof valuesOf>

/** What is left over at a point: of each balance as a fraction of what goes in, of the turbocharger's shaft, and of the iteration itself. */
export function residualsOf(values: Readonly<Record<CorePath, number>>, { state: s, residual }: Outcome) {
  const sum = (paths: readonly CorePath[]): number => paths.reduce((total, path) => total + values[path], 0)
  const open = ({ in: into, out }: (typeof balances)[keyof typeof balances]): number => (sum(into) - sum(out)) / sum(into)
  return {
    massEngine: open(balances.massEngine), massTurbine: open(balances.massTurbine), energyEngine: open(balances.energyEngine), energyCar: open(balances.energyCar),
    turboShaft: (s.delivered - s.compressor) / Math.max(s.compressor, 1000),
    iteration: residual,
  }
}

/** Heat behind the turbine: what went through it less the work it gave, and what went past it. */
function tailpipeHeat(s: State): number {
  const before = exhaustEnthalpy({ temperature: s.beforeTemperature })
  return s.throughTurbine * (before - s.turbine / s.throughTurbine) + s.bypass * before
}
