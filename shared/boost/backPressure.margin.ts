import { margin } from '../build/margin.ts'
import { at as engine } from '../engine/point.ts'
import { at } from './point.ts'
import { boostTargetCurve, exhaustLoss, maxBackPressureRatio, turbineCapacity, turbineEfficiencyOf } from './fields.ts'

export default margin({
  id: 'back-pressure', title: 'Pressure before the turbine over manifold pressure', theme: 'turbo', article: 'the-turbine-and-back-pressure', over: 'sweep',
  demand: engine.backPressureRatio, capacity: maxBackPressureRatio, must: 'stay below', as: 'share', tight: 0.05, band: [at.backPressureRatioLow, at.backPressureRatioHigh], rests: [turbineCapacity, turbineEfficiencyOf],
  remedies: [
    { field: turbineCapacity, move: 'up', says: 'A larger turbine; boost will come later.' },
    { field: exhaustLoss, move: 'down', says: 'A freer exhaust behind the turbine.' },
    { field: boostTargetCurve, move: 'down', says: 'Less boost asks less of the turbine.' },
  ],
  says: 'At {speed} the engine breathes out against {demand} times its manifold pressure; you accept {capacity}: {margin}. The band is what turbine efficiency leaves open.',
  settle: 'One logged pressure before the turbine at full power.',
})
