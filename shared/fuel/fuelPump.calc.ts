import { voltage } from '../spark/fields.ts'
import { calculation, NoAnswer } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import {
  feedBore, feedFittings, feedLength, pumpNumber, pumpRatedFlow, pumpRatedPressure, pumpRatedVoltage, pumpSecondFlow, pumpSecondPressure, pumpVoltageExponent, pumpWiringDrop, regulatorRefers,
  regulatorSetting, regulatorStands, roughness, runningTemperature, viscosity,
} from './fields.ts'
import { fuelViscosityAt } from './fuelViscosityAt.ts'
import { at } from './point.ts'
import { pumpFlowAtPressure } from './pumpFlowAtPressure.ts'
import { pumpFlowAtVoltage } from './pumpFlowAtVoltage.ts'
import { pumpThroughFeed } from './pumpThroughFeed.ts'
import { pumpVoltage } from './quantities.ts'
import { referencedPressure } from './referencedPressure.ts'
import { voltageAfterWiring } from './voltageAfterWiring.ts'

export default calculation({
  id: 'fuel-pump',
  title: 'Fuel pump at pressure and voltage',
  theme: 'fuel',
  asks: 'What does the pump give at the pressure it meets and the voltage that reaches it?',
  article: 'pump-regulator-and-voltage',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'electrical', 'model-only'],
  in: {
    setting: regulatorSetting, reference: regulatorRefers, place: regulatorStands, manifold: engine.manifold, outside: siteAirPressure,
    flow: pumpRatedFlow, flowAt: pumpRatedPressure, secondFlow: pumpSecondFlow, secondAt: pumpSecondPressure, ratedVoltage: pumpRatedVoltage, exponent: pumpVoltageExponent, number: pumpNumber,
    supply: voltage, wiring: pumpWiringDrop, bore: feedBore, length: feedLength, fittings: feedFittings, roughness, viscosity20: viscosity, temperature: runningTemperature, density: at.density, used: at.volumeFlow,
  },
  out: { pumped: at.pumpFlow, pressure: at.pumpPressure, voltage: pumpVoltage },
  curve: ['setting', 'pumped'],
  answer(x) {
    const { flow, flowAt, secondFlow, secondAt, number, ratedVoltage, exponent } = x
    if (!(secondAt > flowAt) || secondFlow > flow) throw new NoAnswer('pump-data', 'The second point of the pump must be at a higher pressure and give no more flow than the first: check the two.')
    const held = x.reference === 'manifold' ? referencedPressure({ setting: x.setting, manifold: x.manifold, outside: x.outside }) : x.setting
    const voltage = voltageAfterWiring({ supply: x.supply, drop: x.wiring })
    if (x.place === 'before') {
      const one = pumpFlowAtPressure({ pressure: held, flow, at: flowAt, secondFlow, secondAt })
      return { pumped: pumpFlowAtVoltage({ flow: one, number, voltage, ratedVoltage, exponent }), pressure: held, voltage }
    }
    const met = pumpThroughFeed({
      held, bore: x.bore, length: x.length, fittings: x.fittings, roughness: x.roughness, density: x.density, viscosity: fuelViscosityAt({ viscosity20: x.viscosity20, temperature: x.temperature }),
      flow, at: flowAt, secondFlow, secondAt, number, voltage, ratedVoltage, exponent,
    })
    return { pumped: met.flow, pressure: met.pressure, voltage }
  },
  says: ({ pumped, used }) => pumped < used
    ? 'Against {pressure} and at {voltage} the pump gives {pumped}, less than the {used} the engine burns: the rail will fall and the mixture turns lean.'
    : 'Against {pressure} and at {voltage} the pump gives {pumped} for the {used} the engine burns.',
  leavesOut: 'Heat and age of the pump, a blocked strainer, vapour on the suction side.',
})
