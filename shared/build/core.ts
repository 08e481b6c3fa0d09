import { newton } from '../numerics/newton.ts'
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
 * The engine and its turbocharger at one shaft speed, full throttle, for assumed charge temperature, pressure before the turbine
 * and manifold pressure. Reference of all enthalpies: 298.15 K.
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
  const coolerLoss = flowPressureLoss({ coefficient: b.coolerLoss, flow: air, density })
  const outlet = pressureBeforeLoss({ after: manifold, loss: coolerLoss })
  const compressorRatio = pressureRatio({ outlet, inlet })
  const corrected = correctedFlow({ flow: flowOfOne({ flow: air, turbos: b.turbos }), temperature: b.airTemperature, pressure: inlet, referenceTemperature: b.map.referenceTemperature, referencePressure: b.map.referencePressure })
  const place = compressorAt({ map: b.map, flow: corrected, ratio: compressorRatio })
  const outletTemperature = compressorOutletTemperature({ inletTemperature: b.airTemperature, ratio: compressorRatio, efficiency: place.efficiency })
  const compressor = compressorPower({ flow: air, inletTemperature: b.airTemperature, outletTemperature })
  const effectiveness = coolerEffectiveness({ flow: air, ratedFlow: b.coolerRatedFlow, ratedEffectiveness: b.coolerRatedEffectiveness })
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
    speed, charge, before, manifold, density, ratio, ve, air, lambda, fuel, exhaust, inlet, outlet, compressorRatio, corrected, place,
    outletTemperature, compressor, effectiveness, cooled, chemical, share, released, indicated, friction, pumping, brake, coolant, oil, surface,
    chargeEnthalpy, leaving, beforeTemperature, asked, afterTemperature, after, expansion, throughTurbine, turbine,
    bypass, delivered,
    missCharge: (cooled - charge) / 10,
    missPower: (delivered - compressor) / (5000 + 0.05 * compressor),
    missFlow: bypass / (0.1 * exhaust),
  }
}

/** Reference temperature of enthalpies. */
export const reference = 298.15
const tolerance = 1e-9

export type Outcome = { readonly state: State; readonly regulating: boolean; readonly residual: number; readonly converged: boolean; readonly steps: number }

/**
 * Solves one speed. First with the wastegate regulating: boost is at target and what the turbine does not need goes past it. Where that
 * would ask the turbine for more than all the exhaust, the wastegate is shut and boost floats to where compressor and turbine balance.
 */
export function solvePoint(b: Given, speed: number, near: Guess): Outcome {
  try { return balanced(b, speed, near) } catch (error) {
    // Numbers far from any engine leave the equations without a value to start from: no solution, and no reason to stop the sweep.
    if (!(error instanceof RangeError)) throw error
    return { state: evaluate(b, speed, near), regulating: false, residual: NaN, converged: false, steps: 0 }
  }
}

function balanced(b: Given, speed: number, near: Guess): Outcome {
  const target = b.airPressure + b.target(speed)
  let last: State
  const box = { scaleCharge: 10, scaleBefore: 1e4 }
  const regulated = newton((x, out) => {
    last = evaluate(b, speed, { charge: x[0]!, before: x[1]!, manifold: target })
    out[0] = last.missCharge
    out[1] = last.missPower
  }, [near.charge, Math.max(near.before, b.airPressure * 1.02)], { scale: [box.scaleCharge, box.scaleBefore], lower: [200, b.airPressure * 1.0001], upper: [700, 2e6], tolerance })
  const open = evaluate(b, speed, { charge: regulated.x[0]!, before: regulated.x[1]!, manifold: target })
  if (regulated.converged && open.bypass >= 0) return { state: open, regulating: true, residual: regulated.residual, converged: true, steps: regulated.steps }

  const floating = newton((x, out) => {
    const s = evaluate(b, speed, { charge: x[0]!, before: x[1]!, manifold: x[2]! })
    out[0] = s.missCharge
    out[1] = s.missPower
    out[2] = s.missFlow
  }, [near.charge, Math.max(near.before, b.airPressure * 1.02), Math.min(near.manifold, target)], {
    scale: [box.scaleCharge, box.scaleBefore, 1e4], lower: [200, b.airPressure * 1.0001, b.airPressure * 0.3], upper: [700, 2e6, target * 1.2], tolerance,
  })
  const state = evaluate(b, speed, { charge: floating.x[0]!, before: floating.x[1]!, manifold: floating.x[2]! })
  return { state, regulating: false, residual: floating.residual, converged: floating.converged, steps: floating.steps }
}
