import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { boostTargetCurve, exhaustLoss, turbineCapacity, wantedBySpeed } from './fields.ts'

export default margin({
  id: 'boost-by-wanted-speed', title: 'Boost by the wanted speed', theme: 'turbo', article: 'response-inertia-and-the-boost-threshold', over: 'build',
  demand: at.thresholdSpeed, capacity: wantedBySpeed, must: 'stay below', as: 'share', tight: 0.05, rests: [turbineCapacity],
  remedies: [
    { field: turbineCapacity, move: 'down', says: 'A smaller turbine: it needs less exhaust for the same power, and stands in the way more at the top.' },
    { field: boostTargetCurve, move: 'down', says: 'Less boost is reached earlier.' },
    { field: exhaustLoss, move: 'down', says: 'A freer exhaust behind the turbine leaves it more to expand.' },
  ],
  says: 'Full boost is there at {demand}, asked by {capacity}: {margin}. Mean flow only: pulses bring it a little earlier.',
  settle: 'One full-throttle pull in a high gear from 2,000 rpm, boost logged.',
})
