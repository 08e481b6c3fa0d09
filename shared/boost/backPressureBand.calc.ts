import { calculation } from '../calculation/calculation.ts'
import { at as cooling } from '../cooling/point.ts'
import { at as engine } from '../engine/point.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { at } from './point.ts'
import { turbineCapacity, turbineEfficiencyBandOf, turbineEfficiencyOf, turboMechanicalEfficiency, turbosFitted } from './fields.ts'
import { backPressureRatio } from './backPressureRatio.ts'
import { capacityOfAll } from './capacityOfAll.ts'
import { turbineBalancePressure } from './turbineBalancePressure.ts'
import { turbineEfficiencyBand } from './turbineEfficiencyBand.ts'
import { turbinePowerAsked } from './turbinePowerAsked.ts'

export default calculation({
  id: 'back-pressure-band', title: 'Band of the back-pressure ratio', theme: 'turbo', article: 'the-turbine-and-back-pressure', cautions: ['exhaust-gas', 'model-only'],
  asks: 'Between what values does the back-pressure ratio lie, when turbine efficiency is not known exactly?',
  in: {
    compressor: at.compressorPower, mechanicalEfficiency: turboMechanicalEfficiency, efficiency: turbineEfficiencyOf, band: turbineEfficiencyBandOf, each: turbineCapacity, turbos: turbosFitted,
    inletTemperature: cooling.exhaustTemperature, outletPressure: at.turbineOutletPressure, manifold: engine.manifold,
  },
  out: { low: at.backPressureRatioLow, high: at.backPressureRatioHigh },
  curve: ['band', 'high'],
  answer({ compressor, mechanicalEfficiency, efficiency, band, each, turbos, inletTemperature, outletPressure, manifold }) {
    const flowCapacity = capacityOfAll({ each, turbos })
    const specificHeat = exhaustSpecificHeat({ temperature: inletTemperature })
    const heatRatio = exhaustHeatRatio({ specificHeat })
    const power = turbinePowerAsked({ compressor, mechanicalEfficiency })
    const ends = turbineEfficiencyBand({ efficiency, band })
    const asked = (of: number) => turbineBalancePressure({ power, outletPressure, inletTemperature, flowCapacity, efficiency: of, specificHeat, heatRatio })
    return { low: backPressureRatio({ turbineInlet: asked(ends.high), manifold }), high: backPressureRatio({ turbineInlet: asked(ends.low), manifold }) }
  },
  says: () => 'With the turbine’s efficiency known to {band} either way the back-pressure ratio lies between {low} and {high}.',
  leavesOut: 'That with the wastegate shut another efficiency changes boost, not the pressure before the turbine; and the band of the turbine’s flow capacity.',
})
