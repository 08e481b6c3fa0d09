import { formula, type About } from '../formula/formula.ts'
import { airMassFlow } from '../engine/airMassFlow.ts'
import { backPressureVe } from '../engine/backPressureVe.ts'
import { fuelFlowForAir } from '../engine/fuelFlowForAir.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { airFlow, backPressureRatio as backPressureRatioOf, chargeTemperature, compressionRatio, displacement, lambda, manifoldPressure, overlapFactor, rotors, shaftSpeed, volumetricEfficiency } from '../engine/quantities.ts'
import { stoichiometricRatio } from '../fuel/quantities.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { role } from '../quantity/quantity.ts'
import { backPressureRatio } from './backPressureRatio.ts'
import { compressorOutletTemperature } from './compressorOutletTemperature.ts'
import { compressorPower } from './compressorPower.ts'
import { exhaustFlow } from './exhaustFlow.ts'
import { expansionRatio } from './expansionRatio.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { pressureAfterLoss } from './pressureAfterLoss.ts'
import { pressureBeforeLoss } from './pressureBeforeLoss.ts'
import { pressureRatio } from './pressureRatio.ts'
import { compressorEfficiency, flowCapacity, gasPressure, gasTemperature, lossCoefficient, mechanicalEfficiency, pressureRatio as ratioOf, turbineEfficiency, turbineInletTemperature, turboPower } from './quantities.ts'
import { shaftPowerBalance } from './shaftPowerBalance.ts'
import { turbineInletPressure } from './turbineInletPressure.ts'
import { turbinePower } from './turbinePower.ts'

/** What the turbine gives and the compressor takes at a manifold pressure, with the wastegate shut. */
export const about = {
  name: 'Turbocharger at a boost, wastegate shut',
  in: {
    speed: shaftSpeed, manifold: manifoldPressure, charge: chargeTemperature, ve: role(volumetricEfficiency, 'η_v0', 'Volumetric efficiency at the reference'), referenceRatio: role(backPressureRatioOf, 'r_x0', 'Reference back-pressure ratio'),
    overlapFactor, compressionRatio, displacement, rotors, lambda, stoichiometricRatio, outside: role(gasPressure, 'p_0', 'Pressure outside'), temperature: gasTemperature,
    inletLoss: role(lossCoefficient, 'K_1', 'Loss coefficient before the compressor'), coolerLoss: role(lossCoefficient, 'K_2', 'Loss coefficient behind the compressor'), exhaustLoss: role(lossCoefficient, 'K_4', 'Loss coefficient behind the turbine'),
    compressorEfficiency, turbineTemperature: turbineInletTemperature, flowCapacity, turbineEfficiency, mechanicalEfficiency,
  },
  out: { air: airFlow, before: role(gasPressure, 'p_3', 'Pressure before the turbine'), ratio: ratioOf, asked: role(turboPower, 'P_c', 'Compressor power'), given: role(turboPower, 'P_g', 'Power the shaft brings to the compressor') },
  steps: [
    'Air from filling, speed and manifold density; all exhaust goes through the turbine, which sets the pressure before it by the ellipse law.',
    'That pressure lowers the filling: the two are worked out in turn until they agree to a millionth, twelve times at most.',
    'Compressor power from ratio and efficiency; turbine power from expansion, temperature and flow, less the bearings’ share.',
  ],
  source: ['derived', 'the formulas of air, compressor and turbine, each at its own source, put together at one point'],
  notes: 'Dry air; one compressor efficiency instead of a map; exhaust behind the turbine at the temperature before it.',
} as const satisfies About

export const turboBalanceAt = formula<typeof about>('turbo-balance-at', {}, (x) => {
  const { manifold, charge, outside, temperature, turbineTemperature, flowCapacity } = x
  const density = gasDensity({ pressure: manifold, temperature: charge })
  const behind = gasDensity({ pressure: outside, temperature: turbineTemperature })
  let before = manifold
  let air = 0, exhaust = 0, after = outside
  for (let i = 0; i < 12; i++) {
    const ve = backPressureVe({ ve: x.ve, backPressureRatio: backPressureRatio({ turbineInlet: before, manifold }), referenceRatio: x.referenceRatio, overlapFactor: x.overlapFactor, compressionRatio: x.compressionRatio })
    air = airMassFlow({ volumetricEfficiency: ve, density, displacement: x.displacement, rotors: x.rotors, speed: x.speed })
    exhaust = exhaustFlow({ airFlow: air, fuelFlow: fuelFlowForAir({ airFlow: air, stoichiometricRatio: x.stoichiometricRatio, lambda: x.lambda }) })
    after = pressureBeforeLoss({ after: outside, loss: flowPressureLoss({ coefficient: x.exhaustLoss, flow: exhaust, density: behind }) })
    const next = turbineInletPressure({ flow: exhaust, inletTemperature: turbineTemperature, outletPressure: after, flowCapacity })
    const moved = Math.abs(next - before)
    before = next
    if (moved < 1e-6 * before) break
  }
  const inlet = pressureAfterLoss({ before: outside, loss: flowPressureLoss({ coefficient: x.inletLoss, flow: air, density: gasDensity({ pressure: outside, temperature }) }) })
  const ratio = pressureRatio({ outlet: pressureBeforeLoss({ after: manifold, loss: flowPressureLoss({ coefficient: x.coolerLoss, flow: air, density }) }), inlet })
  const outletTemperature = compressorOutletTemperature({ inletTemperature: temperature, ratio, efficiency: x.compressorEfficiency })
  const specificHeat = exhaustSpecificHeat({ temperature: turbineTemperature })
  const turbine = turbinePower({
    flow: exhaust, temperature: turbineTemperature, expansionRatio: expansionRatio({ inlet: before, outlet: after }), efficiency: x.turbineEfficiency, specificHeat, heatRatio: exhaustHeatRatio({ specificHeat }),
  })
  return { air, before, ratio, asked: compressorPower({ flow: air, inletTemperature: temperature, outletTemperature }), given: shaftPowerBalance({ turbine, mechanicalEfficiency: x.mechanicalEfficiency }) }
})
