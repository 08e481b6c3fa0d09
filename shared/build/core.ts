import { airMassFlow } from '../engine/airMassFlow.ts'
import { backPressureVe } from '../engine/backPressureVe.ts'
import { brakePower } from '../engine/brakePower.ts'
import { dryAirPressure } from '../engine/dryAirPressure.ts'
import { frictionMeanPressure } from '../engine/frictionMeanPressure.ts'
import { fuelFlowForAir } from '../engine/fuelFlowForAir.ts'
import { fuelPower } from '../engine/fuelPower.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { indicatedPower } from '../engine/indicatedPower.ts'
import { meanPressurePower } from '../engine/meanPressurePower.ts'
import { pressureBeforeThrottle } from '../engine/pressureBeforeThrottle.ts'
import { pumpingMeanPressure } from '../engine/pumpingMeanPressure.ts'
import { releasedShare } from '../engine/releasedShare.ts'
import { airEnthalpyRise } from '../media/airEnthalpyRise.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { exhaustTemperature } from '../media/exhaustTemperature.ts'
import { backPressureRatio } from '../boost/backPressureRatio.ts'
import { bypassFlow } from '../boost/bypassFlow.ts'
import { compressorAt } from '../boost/compressorAt.ts'
import { compressorOutletTemperature } from '../boost/compressorOutletTemperature.ts'
import { compressorPower } from '../boost/compressorPower.ts'
import { cooledTemperature } from '../boost/cooledTemperature.ts'
import { coolerEffectiveness } from '../boost/coolerEffectiveness.ts'
import { coolerEffectivenessInAir } from '../boost/coolerEffectivenessInAir.ts'
import { correctedFlow } from '../boost/correctedFlow.ts'
import { exhaustFlow } from '../boost/exhaustFlow.ts'
import { expansionRatio } from '../boost/expansionRatio.ts'
import { flowOfOne } from '../boost/flowOfOne.ts'
import { flowPressureLoss } from '../boost/flowPressureLoss.ts'
import { pressureAfterLoss } from '../boost/pressureAfterLoss.ts'
import { pressureBeforeLoss } from '../boost/pressureBeforeLoss.ts'
import { pressureRatio } from '../boost/pressureRatio.ts'
import { shaftPowerBalance } from '../boost/shaftPowerBalance.ts'
import { turbineFlow } from '../boost/turbineFlow.ts'
import { turbinePower } from '../boost/turbinePower.ts'
import { exhaustHeat } from '../cooling/exhaustHeat.ts'
import { heatShare } from '../cooling/heatShare.ts'
import { releasedHeat } from '../cooling/releasedHeat.ts'
import { specificEnthalpyOf } from '../cooling/specificEnthalpyOf.ts'
import { type Given } from './given.ts'

/** Unknowns of the coupled solve: charge temperature, pressure before the turbine, manifold pressure. */
export type Guess = { readonly charge: number; readonly before: number; readonly manifold: number }

/** All that follows at one speed from the three unknowns; the misses are what the solve drives to nothing. */
export type State = ReturnType<typeof evaluate>

/**
 * The engine and its turbocharger at one shaft speed, for assumed charge temperature, pressure before the turbine and manifold
 * pressure. Reference of all enthalpies: 298.15 K.
 */
export function evaluate(b: Given, speed: number, { charge, before, manifold }: Guess) {
  // Air through the engine.
  const dry = dryAirPressure({ pressure: manifold, share: b.vapourShare })
  const density = gasDensity({ pressure: dry, temperature: charge })
  const ratio = backPressureRatio({ turbineInlet: before, manifold })
  const ve = backPressureVe({ ve: b.ve(speed), backPressureRatio: ratio, referenceRatio: b.veReferenceRatio, overlapFactor: b.overlapFactor, compressionRatio: b.compressionRatio })
  const air = airMassFlow({ volumetricEfficiency: ve, density, displacement: b.displacement, rotors: b.rotors, speed })
  const lambda = b.lambda(manifold)
  const fuel = fuelFlowForAir({ airFlow: air, stoichiometricRatio: b.stoichiometricRatio, lambda })
  const exhaust = exhaustFlow({ airFlow: air, fuelFlow: fuel })

  // Compressor and charge cooler.
  const inletLoss = flowPressureLoss({ coefficient: b.inletLoss, flow: air, density: b.outsideDensity })
  const inlet = pressureAfterLoss({ before: b.airPressure, loss: inletLoss })
  // Before a throttle that is not fully open stands more pressure; fully open, its loss belongs to the pipe it sits in.
  const pipe = b.throttle ? pressureBeforeThrottle({ flow: air, area: b.throttle.area, dischargeCoefficient: b.throttle.discharge, temperature: charge, manifold }) : manifold
  const pipeDensity = b.throttle ? gasDensity({ pressure: dryAirPressure({ pressure: pipe, share: b.vapourShare }), temperature: charge }) : density
  const coolerLoss = flowPressureLoss({ coefficient: b.coolerLoss, flow: air, density: pipeDensity })
  const outlet = pressureBeforeLoss({ after: pipe, loss: coolerLoss })
  const compressorRatio = pressureRatio({ outlet, inlet })
  const corrected = correctedFlow({ flow: flowOfOne({ flow: air, turbos: b.turbos }), temperature: b.airTemperature, pressure: inlet, referenceTemperature: b.map.referenceTemperature, referencePressure: b.map.referencePressure })
  const place = compressorAt({ map: b.map, flow: corrected, ratio: compressorRatio })
  const outletTemperature = compressorOutletTemperature({ inletTemperature: b.airTemperature, ratio: compressorRatio, efficiency: place.efficiency })
  const compressor = compressorPower({ flow: air, inletTemperature: b.airTemperature, outletTemperature })
  const effectiveness = b.coolerAir
    ? coolerEffectivenessInAir({ units: b.coolerAir.units, flow: air, ratedFlow: b.coolerRatedFlow, air: b.coolerAir.air, ratedAir: b.coolerAir.rated })
    : coolerEffectiveness({ flow: air, ratedFlow: b.coolerRatedFlow, ratedEffectiveness: b.coolerRatedEffectiveness })
  const cooled = cooledTemperature({ inlet: outletTemperature, effectiveness, coolant: b.airTemperature })

  // Heat and work between the ports.
  const chemical = fuelPower({ fuelFlow: fuel, heatingValue: b.heatingValue })
  const share = releasedShare({ lambda })
  const released = releasedHeat({ fuelPower: chemical, releasedShare: share })
  const indicated = indicatedPower({ fuelPower: chemical, releasedShare: share, ottoEfficiency: b.ottoEfficiency, quality: b.quality })
  const friction = meanPressurePower({ meanPressure: frictionMeanPressure({ speed, constant: b.frictionConstant, slope: b.frictionSlope }), displacement: b.displacement, rotors: b.rotors, speed })
  const pumping = meanPressurePower({ meanPressure: pumpingMeanPressure({ exhaustPressure: before, manifoldPressure: manifold }), displacement: b.displacement, rotors: b.rotors, speed })
  const brake = brakePower({ indicated, friction, pumping })
  const coolant = heatShare({ power: released, share: b.coolantShare })
  const oil = heatShare({ power: released, share: b.oilShare })
  const surface = heatShare({ power: released, share: b.surfaceShare })
  const chargeEnthalpy = airEnthalpyRise({ flow: air, from: reference, to: charge })
  const leaving = exhaustHeat({ released, charge: chargeEnthalpy, brake, coolant, oil, surface })
  const beforeTemperature = exhaustTemperature({ enthalpy: specificEnthalpyOf({ heat: leaving, flow: exhaust }) })

  // Turbine: what it must give the compressor leaves the gas before the silencer sees it.
  // At the answer turbine power times mechanical efficiency is compressor power, so this is what the gas has lost by then.
  const asked = compressor / b.mechanicalEfficiency
  const afterTemperature = exhaustTemperature({ enthalpy: specificEnthalpyOf({ heat: leaving - asked, flow: exhaust }) })
  const silencerLoss = flowPressureLoss({ coefficient: b.exhaustLoss, flow: exhaust, density: gasDensity({ pressure: b.airPressure, temperature: afterTemperature }) })
  const after = pressureBeforeLoss({ after: b.airPressure, loss: silencerLoss })
  const expansion = expansionRatio({ inlet: before, outlet: after })
  const specificHeat = exhaustSpecificHeat({ temperature: beforeTemperature })
  const throughTurbine = turbineFlow({ inletPressure: before, inletTemperature: beforeTemperature, outletPressure: after, flowCapacity: b.turbineCapacity })
  const turbine = turbinePower({ flow: throughTurbine, temperature: beforeTemperature, expansionRatio: expansion, efficiency: b.turbineEfficiency, specificHeat, heatRatio: exhaustHeatRatio({ specificHeat }) })

  const bypass = bypassFlow({ exhaustFlow: exhaust, turbineFlow: throughTurbine })
  const delivered = shaftPowerBalance({ turbine, mechanicalEfficiency: b.mechanicalEfficiency })

  return {
    speed, charge, before, manifold, pipe, density, ratio, ve, air, lambda, fuel, exhaust, inlet, outlet, compressorRatio, corrected, place,
    outletTemperature, compressor, effectiveness, cooled, chemical, share, released, indicated, friction, pumping, brake, coolant, oil, surface,
    chargeEnthalpy, leaving, beforeTemperature, asked, afterTemperature, after, expansion, specificHeat, throughTurbine, turbine,
    bypass, delivered,
    missCharge: (cooled - charge) / 10,
    missPower: (delivered - compressor) / (5000 + 0.05 * compressor),
    missFlow: bypass / (0.1 * exhaust),
  }
}

/** Reference temperature of enthalpies. */
export const reference = 298.15
