import { calculation } from '../calculation/calculation.ts'
import { at as cooling } from '../cooling/point.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { at } from './point.ts'
import { wastegateDiameter, wastegateDischarge, wastegateNumber } from './fields.ts'
import { bypassShare } from './bypassShare.ts'
import { gasConstantFrom } from './gasConstantFrom.ts'
import { valveFlowArea } from './valveFlowArea.ts'
import { wastegateCapacity } from './wastegateCapacity.ts'

export default calculation({
  id: 'wastegate-passes', title: 'What the wastegate passes', theme: 'turbo', article: 'wastegate-spring-and-two-port-actuators', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'Does the wastegate, wide open, pass all the exhaust that the turbine does not need?',
  in: {
    diameter: wastegateDiameter, number: wastegateNumber, dischargeCoefficient: wastegateDischarge,
    inletPressure: at.inletPressureAsked, outletPressure: at.outletPressureAsked, inletTemperature: cooling.exhaustTemperatureAsked,
    wastegateFlow: at.wastegateAsked, exhaustFlow: at.exhaustFlowAsked,
  },
  out: { capacity: at.wastegateCapacity, share: at.bypassShare },
  curve: ['diameter', 'capacity'],
  answer({ diameter, number, dischargeCoefficient, inletPressure, outletPressure, inletTemperature, wastegateFlow, exhaustFlow }) {
    const specificHeat = exhaustSpecificHeat({ temperature: inletTemperature })
    const heatRatio = exhaustHeatRatio({ specificHeat })
    const gasConstant = gasConstantFrom({ specificHeat, heatRatio })
    const area = valveFlowArea({ diameter, number })
    return {
      capacity: wastegateCapacity({ area, dischargeCoefficient, inletPressure, inletTemperature, outletPressure, heatRatio, gasConstant }),
      share: bypassShare({ wastegateFlow, exhaustFlow }),
    }
  },
  says: ({ capacity, wastegateFlow }) => capacity < wastegateFlow
    ? 'Wide open the wastegate passes {capacity}, less than the {wastegateFlow} it must: boost will climb past its target.'
    : '{share} of the exhaust, {wastegateFlow}, has to go past the turbine; wide open the valve passes {capacity}.',
  leavesOut: 'How well the manifold lets gas turn towards the valve, and pulses.',
})
