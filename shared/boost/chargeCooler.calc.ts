import { calculation, optional } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { coverage } from '../cooling/fields.ts'
import { at as cooling } from '../cooling/point.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { at } from './point.ts'
import { coolerLoss, coolerRatedAir, coolerRatedEffectiveness, coolerRatedFlow } from './fields.ts'
import { cooledTemperature } from './cooledTemperature.ts'
import { effectivenessHere } from './effectivenessHere.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { effectiveness as effectivenessOf, gasTemperature, pressureLoss } from './quantities.ts'

export default calculation({
  id: 'charge-cooler', title: 'Charge cooler', theme: 'turbo', article: 'charge-cooling', cautions: ['hot-metal', 'model-only'],
  asks: 'How cool does the charge come out, and what pressure does the cooler cost?',
  in: {
    flow: engine.air, inlet: at.compressorOutletTemperature, coolant: siteAirTemperature, manifold: engine.manifold,
    ratedFlow: coolerRatedFlow, ratedEffectiveness: coolerRatedEffectiveness, ratedAir: optional(coolerRatedAir), coreAir: cooling.coreAirFlow, coverage, coefficient: coolerLoss,
  },
  out: { effectiveness: effectivenessOf, outlet: gasTemperature, loss: pressureLoss },
  curve: ['flow', 'outlet'],
  answer({ flow, inlet, coolant, manifold, ratedFlow, ratedEffectiveness, ratedAir, coreAir, coverage, coefficient }) {
    const effectiveness = effectivenessHere({ flow, ratedFlow, ratedEffectiveness, ratedAir, coreAir, coverage })
    const outlet = cooledTemperature({ inlet, effectiveness, coolant })
    const density = gasDensity({ pressure: manifold, temperature: outlet })
    return { effectiveness, outlet, loss: flowPressureLoss({ coefficient, flow, density }) }
  },
  says: ({ effectiveness }) => effectiveness < 0.6
    ? 'At {flow} the cooler does {effectiveness} of what it could: the charge comes out at {outlet}. More core, or more cooling air, is what helps.'
    : 'At {flow} the charge goes in at {inlet} and comes out at {outlet}; the way through costs {loss}.',
  leavesOut: 'Warming of the cooling air where its flow is not known, heat soaked up by the core in a short pull, and water in the charge.',
})
