import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { kPa, lPerMin } from '../quantity/si.ts'
import { circuitFlow } from './circuitFlow.ts'
import { circuitRise } from './circuitRise.ts'
import { pumpSpeed } from './fields.ts'
import { circuitDrop, coolantFlowOf, pumpRise } from './quantities.ts'

export default calculation({
  id: 'coolant-circuit',
  title: 'Coolant flow over speed',
  theme: 'cooling',
  asks: 'What flow do this pump and this circuit settle at, and what does a freer circuit bring?',
  article: 'where-the-heat-goes',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: { speed: engine.speed, ratedSpeed: pumpSpeed, shutOff: free(pumpRise, kPa(140), 'Pump against a shut valve, at the stated speed'), freeFlow: free(coolantFlowOf, lPerMin(300), 'Pump without resistance, at the stated speed'), drop: free(circuitDrop, kPa(80)), dropFlow: free(coolantFlowOf, lPerMin(180), 'Flow at which the circuit loses that') },
  out: { flow: coolantFlowOf, rise: pumpRise },
  curve: ['speed', 'flow'],
  answer({ speed, ratedSpeed, shutOff, freeFlow, drop, dropFlow }) {
    const flow = circuitFlow({ shutOff, freeFlow, drop, dropFlow, speed, ratedSpeed })
    return { flow, rise: circuitRise({ drop, dropFlow, flow }) }
  },
  says: () => 'At {speed} pump and circuit settle at {flow}, and the pump adds {rise}.',
  leavesOut: 'Cavitation, which takes flow away at high speed; a thermostat that is not fully open; a slipping belt.',
})
