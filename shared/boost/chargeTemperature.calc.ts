import { calculation, optional } from '../calculation/calculation.ts'
import { at as engine } from '../engine/point.ts'
import { coverage } from '../cooling/fields.ts'
import { at as cooling } from '../cooling/point.ts'
import { siteAirPressure, siteAirTemperature } from '../engine/fields.ts'
import { gasDensity } from '../engine/gasDensity.ts'
import { at } from './point.ts'
import { coolerLoss, coolerRatedAir, coolerRatedEffectiveness, coolerRatedFlow, inletLoss } from './fields.ts'
import { compressorOutletTemperature } from './compressorOutletTemperature.ts'
import { cooledTemperature } from './cooledTemperature.ts'
import { effectivenessHere } from './effectivenessHere.ts'
import { flowPressureLoss } from './flowPressureLoss.ts'
import { gaugeBoost } from './gaugeBoost.ts'
import { pressureAfterLoss } from './pressureAfterLoss.ts'
import { pressureBeforeLoss } from './pressureBeforeLoss.ts'
import { pressureRatio } from './pressureRatio.ts'
import { boostPressure, chargeTemperature } from '../engine/quantities.ts'
import { gasTemperature, pressureRatio as ratioOf } from './quantities.ts'

export default calculation({
  id: 'charge-temperature-end-to-end', title: 'Charge temperature, end to end', theme: 'turbo', article: 'charge-cooling', cautions: ['hot-metal', 'knock', 'model-only'],
  asks: 'How warm is the charge in the manifold at this boost, from the air outside to the throttle?',
  in: {
    outside: siteAirPressure, temperature: siteAirTemperature, manifold: engine.manifold, flow: engine.air, efficiency: at.compressorEfficiency,
    inletCoefficient: inletLoss, coolerCoefficient: coolerLoss, ratedFlow: coolerRatedFlow, ratedEffectiveness: coolerRatedEffectiveness, ratedAir: optional(coolerRatedAir), coreAir: cooling.coreAirFlow, coverage, assumed: engine.charge,
  },
  out: { boost: boostPressure, ratio: ratioOf, outlet: gasTemperature, charge: chargeTemperature },
  curve: ['manifold', 'charge'],
  answer({ outside, temperature, manifold, flow, efficiency, inletCoefficient, coolerCoefficient, ratedFlow, ratedEffectiveness, ratedAir, coreAir, coverage, assumed }) {
    const inlet = pressureAfterLoss({ before: outside, loss: flowPressureLoss({ coefficient: inletCoefficient, flow, density: gasDensity({ pressure: outside, temperature }) }) })
    const before = pressureBeforeLoss({ after: manifold, loss: flowPressureLoss({ coefficient: coolerCoefficient, flow, density: gasDensity({ pressure: manifold, temperature: assumed }) }) })
    const ratio = pressureRatio({ outlet: before, inlet })
    const outlet = compressorOutletTemperature({ inletTemperature: temperature, ratio, efficiency })
    const effectiveness = effectivenessHere({ flow, ratedFlow, ratedEffectiveness, ratedAir, coreAir, coverage })
    return { boost: gaugeBoost({ manifold, outside }), ratio, outlet, charge: cooledTemperature({ inlet: outlet, effectiveness, coolant: temperature }) }
  },
  says: () => 'For {boost} the compressor works at a ratio of {ratio}, because filter and cooler take their part. It sends out air at {outlet}; the charge reaches the engine at {charge}.',
  leavesOut: 'Heat picked up under the bonnet, in the throttle and in the ports; the charge temperature you put in serves only for the density in the cooler.',
})
