import { calculation } from '../calculation/calculation.ts'
import { at as cooling } from '../cooling/point.ts'
import { at as engine } from '../engine/point.ts'
import { backPressureRatio as backPressureRatioOf } from '../engine/quantities.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { at } from './point.ts'
import { turbineCapacity, turbineEfficiencyOf, turboMechanicalEfficiency, turbosFitted } from './fields.ts'
import { backPressureRatio } from './backPressureRatio.ts'
import { capacityOfAll } from './capacityOfAll.ts'
import { expansionRatio } from './expansionRatio.ts'
import { turbineBalancePressure } from './turbineBalancePressure.ts'
import { turbineFlow } from './turbineFlow.ts'
import { turbinePowerAsked } from './turbinePowerAsked.ts'
import { expansionRatio as ratioOf, gasFlow, gasPressure } from './quantities.ts'

export default calculation({
  id: 'turbine-balance', title: 'Pressure the turbine asks for', theme: 'turbo', article: 'the-turbine-and-back-pressure', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'What pressure before the turbine drives the compressor, and how much exhaust does that take?',
  in: {
    compressor: at.compressorPower, mechanicalEfficiency: turboMechanicalEfficiency, efficiency: turbineEfficiencyOf, each: turbineCapacity, turbos: turbosFitted,
    inletTemperature: cooling.exhaustTemperature, outletPressure: at.turbineOutletPressure, manifold: engine.manifold,
  },
  out: { inletPressure: gasPressure, expansion: ratioOf, flow: gasFlow, ratio: backPressureRatioOf },
  curve: ['efficiency', 'inletPressure'],
  answer({ compressor, mechanicalEfficiency, efficiency, each, turbos, inletTemperature, outletPressure, manifold }) {
    const flowCapacity = capacityOfAll({ each, turbos })
    const specificHeat = exhaustSpecificHeat({ temperature: inletTemperature })
    const heatRatio = exhaustHeatRatio({ specificHeat })
    const power = turbinePowerAsked({ compressor, mechanicalEfficiency })
    const inletPressure = turbineBalancePressure({ power, outletPressure, inletTemperature, flowCapacity, efficiency, specificHeat, heatRatio })
    return {
      inletPressure, expansion: expansionRatio({ inlet: inletPressure, outlet: outletPressure }),
      flow: turbineFlow({ inletPressure, inletTemperature, outletPressure, flowCapacity }), ratio: backPressureRatio({ turbineInlet: inletPressure, manifold }),
    }
  },
  says: ({ ratio }) => ratio > 1.8
    ? 'The turbine asks {inletPressure}, {ratio} times the manifold’s: a larger turbine, or a freer exhaust behind it, would let the engine breathe out.'
    : 'With {flow} of exhaust through it the turbine drives the compressor at {inletPressure}, {ratio} times the pressure in the manifold. All exhaust beyond that has to go past it.',
  leavesOut: 'Pulses, which help a turbine at low speed, and any change of efficiency with speed.',
})
