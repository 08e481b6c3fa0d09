import { margin } from '../build/margin.ts'
import { handoverStart, longestDuty, primaryDeadTime, primaryFlow, regulatorSetting } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'primary-duty-handover',
  title: 'Primaries alone below hand-over',
  theme: 'fuel',
  article: 'two-stages-idle-tip-in-hand-over',
  over: 'sweep',
  demand: at.primaryDutyAtHandover,
  capacity: longestDuty,
  must: 'stay below',
  as: 'difference',
  tight: 0.15,
  rests: [primaryFlow, primaryDeadTime],
  remedies: [
    { field: handoverStart, move: 'down', says: 'An earlier hand-over relieves the primaries, and shortens the first pulse of the secondaries.' },
    { field: primaryFlow, move: 'up', says: 'Larger primaries need less of the turn, and idle on a shorter pulse.' },
    { field: regulatorSetting, move: 'up', says: 'More pressure passes more fuel in the same time, and asks more of the pump.' },
  ],
  says: 'At {speed} and part throttle, just before the secondaries come in, the primaries alone are open {demand} of each shaft turn; {capacity} is allowed: {margin}.',
  settle: 'Hold the highest shaft speed at the manifold pressure of hand-over and log the pulse of the primaries.',
})
