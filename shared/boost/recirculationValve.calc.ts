import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { siteAirTemperature } from '../engine/fields.ts'
import { at as engine } from '../engine/point.ts'
import { litre, percent } from '../quantity/si.ts'
import { role } from '../quantity/quantity.ts'
import { actualFlow } from './actualFlow.ts'
import { airThroughOpening } from './airThroughOpening.ts'
import { areaForFlow } from './areaForFlow.ts'
import { compressorMapOf, turbosFitted } from './fields.ts'
import { compressorAt } from './compressorAt.ts'
import { correctedSpeed } from './correctedSpeed.ts'
import { flowOfAll } from './flowOfAll.ts'
import { at } from './point.ts'
import { pressureAtRatio } from './pressureAtRatio.ts'
import { dischargeCoefficient, flowArea, gasFlow, pipeVolume, reserveShare, shortTime, valveDiameter } from './quantities.ts'
import { recirculationFlow } from './recirculationFlow.ts'
import { surgeRatioAtSpeed } from './surgeRatioAtSpeed.ts'
import { timeToSurge } from './timeToSurge.ts'
import { valveDiameterFor } from './valveDiameterFor.ts'
import { valveFlowArea } from './valveFlowArea.ts'

export default calculation({
  id: 'recirculation-valve', title: 'Recirculation valve for a shut throttle', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', cautions: ['model-only'],
  asks: 'What must the recirculation valve pass so that the compressor does not surge when the throttle shuts?',
  in: {
    map: compressorMapOf, turbos: turbosFitted, corrected: at.correctedFlow, ratio: at.pressureRatio, turboSpeed: at.compressorSpeed, inlet: at.compressorInletPressure, outlet: at.compressorOutletPressure,
    outside: siteAirTemperature, temperature: at.compressorOutletTemperature, flow: engine.air, closed: free(gasFlow, 0.015, 'Flow that the engine takes with the throttle shut'),
    reserve: free(reserveShare, percent(20), 'Flow kept beyond surge'), diameter: free(valveDiameter, 0.025, 'Bore of the valve fitted'), coefficient: free(dischargeCoefficient, 0.6, 'Discharge coefficient of the valve'),
    volume: free(pipeVolume, litre(12), 'Volume from compressor to throttle, cooler included'),
  },
  out: { must: role(gasFlow, 'm_v', 'Flow the valve must pass'), passes: role(gasFlow, 'm_max', 'Flow the fitted valve passes'), needed: role(valveDiameter, 'd_v', 'Bore that would just do'), time: shortTime, area: role(flowArea, 'A_v', 'Flow area needed, friction left out') },
  curve: ['ratio', 'must'],
  answer({ map, turbos, corrected, ratio, turboSpeed, inlet, outlet, outside, temperature, flow, closed, reserve, diameter, coefficient, volume }) {
    const { referenceTemperature, referencePressure } = map
    const { surgeFlow } = compressorAt({ map, flow: corrected, ratio })
    const reference = { temperature: outside, pressure: inlet, referenceTemperature, referencePressure }
    const surge = flowOfAll({ flow: actualFlow({ ...reference, corrected: surgeFlow }), turbos })
    const must = recirculationFlow({ surge, reserve, engine: closed })
    const fitted = valveFlowArea({ diameter, number: 1 })
    const passes = airThroughOpening({ area: fitted, dischargeCoefficient: coefficient, inletPressure: outlet, inletTemperature: temperature, outletPressure: inlet })
    if (!(passes > 0)) throw new NoAnswer('recirculation-valve', 'There is no boost to let out at this point: nothing would flow through the valve.')
    if (!(flow > closed)) throw new NoAnswer('recirculation-valve', 'The engine takes no less air with the throttle shut than it took before: then nothing fills the pipes.')
    const area = areaForFlow({ area: fitted, capacity: passes, flow: must })
    const limit = surgeRatioAtSpeed({ map, speed: correctedSpeed({ speed: turboSpeed, temperature: outside, referenceTemperature }) })
    return {
      must, passes, needed: valveDiameterFor({ area, number: 1 }), area,
      time: timeToSurge({ volume, from: outlet, to: pressureAtRatio({ inlet, ratio: limit.ratio }), temperature, into: flow, leaving: closed }),
    }
  },
  says: ({ must, passes }) => must > passes
    ? 'Shut at this point, the throttle leaves {must} to be let past; the valve passes {passes}, so the compressor chatters until its wheel has slowed. {needed} would just do. There is {time} before it starts.'
    : 'Shut at this point, the throttle leaves {must} to be let past and the valve passes {passes}. It has to be open within about {time}, before the pipes are full.',
  leavesOut: 'The wheel slowing down while the valve opens, pressure that the valve’s own hose loses, and a valve that opens late: it needs its own hose from the manifold.',
})
