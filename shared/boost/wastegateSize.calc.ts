import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { at as cooling } from '../cooling/point.ts'
import { exhaustHeatRatio } from '../media/exhaustHeatRatio.ts'
import { exhaustSpecificHeat } from '../media/exhaustSpecificHeat.ts'
import { at } from './point.ts'
import { wastegateDiameter, wastegateDischarge, wastegateNumber } from './fields.ts'
import { areaForFlow } from './areaForFlow.ts'
import { bypassFlow } from './bypassFlow.ts'
import { gasConstantFrom } from './gasConstantFrom.ts'
import { valveDiameterFor } from './valveDiameterFor.ts'
import { valveFlowArea } from './valveFlowArea.ts'
import { wastegateCapacity } from './wastegateCapacity.ts'
import { flowArea, gasFlow, valveDiameter } from './quantities.ts'

export default calculation({
  id: 'wastegate-size', title: 'Size of the wastegate', theme: 'turbo', article: 'wastegate-spring-and-two-port-actuators', cautions: ['exhaust-gas', 'hot-metal', 'model-only'],
  asks: 'How large must the wastegate be to pass what the turbine does not need?',
  in: {
    exhaustFlow: at.exhaustFlow, turbineFlow: at.turbineFlow, inletPressure: at.turbineInletPressure, outletPressure: at.turbineOutletPressure,
    inletTemperature: cooling.exhaustTemperature, diameter: wastegateDiameter, number: wastegateNumber, dischargeCoefficient: wastegateDischarge,
  },
  out: { bypass: role(gasFlow, 'm_w', 'Flow to be passed'), capacity: role(gasFlow, 'm_max', 'Flow passed wide open'), area: flowArea, needed: valveDiameter },
  curve: ['turbineFlow', 'needed'],
  answer({ exhaustFlow, turbineFlow, inletPressure, outletPressure, inletTemperature, diameter, number, dischargeCoefficient }) {
    if (turbineFlow > exhaustFlow) throw new NoAnswer('wastegate-passes', 'The turbine would take more than all the exhaust: there is nothing to bypass.')
    if (inletPressure <= outletPressure) throw new NoAnswer('wastegate-passes', 'Without more pressure before the turbine than behind it nothing flows through a wastegate.')
    const specificHeat = exhaustSpecificHeat({ temperature: inletTemperature })
    const heatRatio = exhaustHeatRatio({ specificHeat })
    const bypass = bypassFlow({ exhaustFlow, turbineFlow })
    const present = valveFlowArea({ diameter, number })
    const capacity = wastegateCapacity({ area: present, dischargeCoefficient, inletPressure, inletTemperature, outletPressure, heatRatio, gasConstant: gasConstantFrom({ specificHeat, heatRatio }) })
    const area = areaForFlow({ area: present, capacity, flow: bypass })
    return { bypass, capacity, area, needed: valveDiameterFor({ area, number }) }
  },
  says: ({ bypass, capacity }) => bypass > capacity
    ? 'The valve passes {capacity} wide open and would have to pass {bypass}: boost will climb past its target. It takes {needed}.'
    : '{bypass} has to go past the turbine; the valve passes {capacity} wide open. {needed} would just do.',
  leavesOut: 'How well the manifold lets gas turn towards the valve: a poor branch makes a large valve act small.',
})
