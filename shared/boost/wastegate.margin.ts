import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { turbineCapacity, wastegateDiameter, wastegateNumber } from './fields.ts'

export default margin({
  id: 'wastegate-passes', title: 'Wastegate passes enough', theme: 'turbo', article: 'placing-the-engine-on-a-compressor-map', over: 'sweep',
  demand: at.wastegateAsked, capacity: at.wastegateCapacity, must: 'stay below', as: 'share', tight: 0.3, best: 'tight', rests: [turbineCapacity, wastegateDiameter],
  remedies: [
    { field: wastegateDiameter, move: 'up', says: 'A larger valve.' },
    { field: wastegateNumber, move: 'up', says: 'One more valve.' },
    { field: turbineCapacity, move: 'up', says: 'A larger turbine needs more of the exhaust itself and leaves less to pass.' },
  ],
  says: 'At {speed} the wastegate has to pass {demand} and passes {capacity} wide open: {margin}. How well the manifold feeds it is not in this: only a logged pull tells.',
  settle: 'Run at full throttle with the wastegate wired wide open and log boost to the top: what is left is what the valve does not pass.',
})
