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
import { reference, type Outcome, type State } from './core.ts'
import { type Given } from './given.ts'

/** The core's answers by path: what the links of the chain, the margins and the pages read. */
export function valuesOf(b: Given, s: State) {
  const band = exhaustHeatBand({ heat: s.leaving, fuelPower: s.chemical, band: b.exhaustBand })
  const temperature = (heat: number): number => exhaustTemperature({ enthalpy: specificEnthalpyOf({ heat, flow: s.exhaust }) })
  return {
    'engine.speed': s.speed, 'engine.manifoldPressure': s.manifold, 'engine.chargeTemperature': s.charge, 'engine.airFlow': s.air,
    'engine.volumetricEfficiency': s.ve, 'engine.lambda': s.lambda, 'engine.power': s.brake, 'engine.torque': shaftTorque({ power: s.brake, speed: s.speed }),
    'engine.backPressureRatio': s.ratio,
    'boost.compressorInletPressure': s.inlet, 'boost.compressorOutletPressure': s.outlet, 'boost.compressorOutletTemperature': s.outletTemperature,
    'boost.pressureRatio': s.compressorRatio, 'boost.correctedFlow': s.corrected, 'boost.compressorEfficiency': s.place.efficiency, 'boost.compressorPower': s.compressor,
    'boost.compressorSpeed': actualSpeed({ corrected: s.place.speed, temperature: b.airTemperature, referenceTemperature: b.map.referenceTemperature }),
    'boost.turbineInletPressure': s.before, 'boost.turbineOutletPressure': s.after, 'boost.turbineFlow': s.throughTurbine, 'boost.wastegateFlow': Math.max(0, s.bypass),
    'boost.exhaustFlow': s.exhaust, 'boost.boost': gaugeBoost({ manifold: s.manifold, outside: b.airPressure }),
    'fuel.massFlow': s.fuel, 'fuel.fuelPerCharge': fuelPerCharge({ fuelFlow: s.fuel, rotors: b.rotors, speed: s.speed }),
    'cooling.fuelPower': s.chemical, 'cooling.coolantHeat': s.coolant, 'cooling.oilHeat': s.oil, 'cooling.surfaceHeat': s.surface, 'cooling.exhaustHeat': s.leaving,
    'cooling.unburnedHeat': unburnedHeat({ fuelPower: s.chemical, releasedShare: s.share }),
    'cooling.chargeCoolerHeat': airEnthalpyRise({ flow: s.air, from: s.charge, to: s.outletTemperature }),
    'cooling.exhaustTemperature': s.beforeTemperature, 'cooling.exhaustTemperatureLow': temperature(band.low), 'cooling.exhaustTemperatureHigh': temperature(band.high),
  }
}

/** Paths that only the core makes. */
export const corePointPaths: readonly (keyof ReturnType<typeof valuesOf>)[] = [
  'engine.speed', 'engine.manifoldPressure', 'engine.chargeTemperature', 'engine.airFlow', 'engine.volumetricEfficiency', 'engine.lambda', 'engine.power', 'engine.torque', 'engine.backPressureRatio',
  'boost.compressorInletPressure', 'boost.compressorOutletPressure', 'boost.compressorOutletTemperature', 'boost.pressureRatio', 'boost.correctedFlow', 'boost.compressorEfficiency',
  'boost.compressorPower', 'boost.compressorSpeed', 'boost.turbineInletPressure', 'boost.turbineOutletPressure', 'boost.turbineFlow', 'boost.wastegateFlow', 'boost.exhaustFlow', 'boost.boost',
  'fuel.massFlow', 'fuel.fuelPerCharge', 'cooling.fuelPower', 'cooling.coolantHeat', 'cooling.oilHeat', 'cooling.surfaceHeat', 'cooling.exhaustHeat', 'cooling.unburnedHeat',
  'cooling.chargeCoolerHeat', 'cooling.exhaustTemperature', 'cooling.exhaustTemperatureLow', 'cooling.exhaustTemperatureHigh',
]

/**
 * What is left over at a point, as fractions: mass and energy of the engine between its ports and of the whole car, the balance on the
 * turbocharger's shaft, and the iteration itself. The exhaust heat is the remainder of the engine's balance; the whole-car balance is
 * summed anew from the ends of every path, so that it closes only if the chain of temperatures and flows is right.
 */
export function residualsOf(b: Given, { state: s, residual }: Outcome) {
  const unburned = unburnedHeat({ fuelPower: s.chemical, releasedShare: s.share })
  const tailpipe = s.throughTurbine * exhaustEnthalpy({ temperature: turbineOut(s) }) + s.bypass * exhaustEnthalpy({ temperature: s.beforeTemperature })
  const cooler = airEnthalpyRise({ flow: s.air, from: s.charge, to: s.outletTemperature })
  const airIn = airEnthalpyRise({ flow: s.air, from: reference, to: b.airTemperature })
  const bearing = s.turbine - s.delivered
  const engineIn = s.chemical + s.chargeEnthalpy
  const engineOut = s.brake + s.coolant + s.oil + s.surface + unburned + s.exhaust * exhaustEnthalpy({ temperature: s.beforeTemperature })
  const carOut = s.brake + s.coolant + s.oil + s.surface + unburned + tailpipe + cooler + bearing
  return {
    massEngine: (s.air + s.fuel - s.exhaust) / s.exhaust,
    massTurbine: (s.exhaust - s.throughTurbine - s.bypass) / s.exhaust,
    energyEngine: (engineIn - engineOut) / s.chemical,
    energyCar: (s.chemical + airIn - carOut) / s.chemical,
    turboShaft: (s.delivered - s.compressor) / Math.max(s.compressor, 1000),
    iteration: residual,
  }
}
/** Temperature of the gas that went through the turbine: its enthalpy less the work it gave. */
const turbineOut = (s: State): number => exhaustTemperature({ enthalpy: exhaustEnthalpy({ temperature: s.beforeTemperature }) - s.turbine / s.throughTurbine })
