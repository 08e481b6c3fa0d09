import { margin } from '../build/margin.ts'
import { boostTargetCurve } from '../boost/fields.ts'
import { at as engine } from '../engine/point.ts'
import { at } from './point.ts'
import { clampLostToSpeed, clutchBasis, clutchRating } from './fields.ts'

export default margin({
  id: 'clutch-torque',
  title: 'Clutch torque',
  theme: 'driveline',
  article: 'clutch-capacity',
  over: 'sweep',
  demand: engine.torque,
  capacity: at.clutchCapacity,
  must: 'stay below',
  as: 'share',
  tight: 0.2,
  rests: [clutchRating, clutchBasis],
  remedies: [
    { field: clutchRating, move: 'up', says: 'Fit a clutch that holds more, with its rating’s basis in writing' },
    { field: clampLostToSpeed, move: 'down', says: 'Fit a cover whose spring loses less clamp at speed' },
    { field: boostTargetCurve, move: 'down', says: 'Less boost.' },
  ],
  says: 'At {speed} the engine makes {demand} and the clutch holds {capacity}: {margin}.',
  settle: 'One full-throttle pull in a high gear at low speed with shaft speed and road speed logged: if they part, that torque is the slip torque.',
})
