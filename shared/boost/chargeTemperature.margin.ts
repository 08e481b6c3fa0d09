import { margin } from '../build/margin.ts'
import { at as engine } from '../engine/point.ts'
import { boostTargetCurve, coolerRatedEffectiveness, coolerRatedFlow, maxChargeTemperature } from './fields.ts'

export default margin({
  id: 'charge-temperature', title: 'Charge temperature', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
  demand: engine.charge, capacity: maxChargeTemperature, must: 'stay below', as: 'difference', tight: 5, rests: [coolerRatedEffectiveness, coolerRatedFlow],
  remedies: [
    { field: coolerRatedEffectiveness, move: 'up', says: 'A larger charge cooler, or more air through it.' },
    { field: boostTargetCurve, move: 'down', says: 'Less boost heats the air less.' },
  ],
  says: 'At {speed} the charge reaches the engine at {demand}; you accept {capacity}: {margin}. On the road the cooler also soaks up heat from pull to pull.',
  settle: 'A thermometer behind the charge cooler, logged over a pull of ten seconds.',
})
