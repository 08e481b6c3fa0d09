import { calculation, free } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { role } from '../quantity/quantity.ts'
import { degC } from '../quantity/si.ts'
import { bypassedFlow } from './bypassedFlow.ts'
import { pumpFlow, pumpSpeed, thermostatOpen, thermostatOpens } from './fields.ts'
import { pumpFlowAt } from './pumpFlowAt.ts'
import { coolantFlowOf, coolantTemperatureOf, thermostatOpening } from './quantities.ts'
import { radiatorFlow } from './radiatorFlow.ts'
import { thermostatShare } from './thermostatShare.ts'

export default calculation({
  id: 'thermostat-flow',
  title: 'Thermostat',
  theme: 'cooling',
  asks: 'How far is the thermostat open at this temperature, and what reaches the radiator?',
  article: 'where-the-heat-goes',
  cautions: ['hot-pressurised-coolant', 'model-only'],
  in: { temperature: free(coolantTemperatureOf, degC(90)), opens: thermostatOpens, open: thermostatOpen, speed: engine.speed, rated: pumpFlow, ratedSpeed: pumpSpeed },
  out: { opening: thermostatOpening, radiator: role(coolantFlowOf, 'V_r', 'Through the radiator'), bypass: role(coolantFlowOf, 'V_b', 'Past the radiator') },
  curve: ['temperature', 'radiator'],
  answer({ temperature, opens, open, speed, rated, ratedSpeed }) {
    const pump = pumpFlowAt({ rated, speed, ratedSpeed })
    const opening = thermostatShare({ temperature, opens, open })
    const radiator = radiatorFlow({ pump, opening })
    return { opening, radiator, bypass: bypassedFlow({ pump, radiator }) }
  },
  says: ({ opening }) => opening >= 1 ? 'At {temperature} it is fully open: all {radiator} passes the radiator.' : opening <= 0 ? 'At {temperature} it is shut: {bypass} goes round past the radiator.' : 'At {temperature} it is open by {opening}: {radiator} passes the radiator and {bypass} goes round.',
  leavesOut: 'The lag of its wax, its hysteresis of a few kelvin, and a bypass that stays open.',
})
