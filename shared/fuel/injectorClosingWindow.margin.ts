import { margin } from '../build/margin.ts'
import { longestDuty, primaryDeadTime, primaryFlow, regulatorSetting, secondaryDeadTime, secondaryFlow } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'injector-closing-window',
  title: 'Window left for closing',
  theme: 'fuel',
  article: 'two-stages-idle-tip-in-hand-over',
  over: 'sweep',
  demand: at.worstDuty,
  capacity: longestDuty,
  must: 'stay below',
  as: 'difference',
  tight: 0.15,
  rests: [primaryFlow, secondaryFlow, primaryDeadTime, secondaryDeadTime],
  remedies: [
    { field: secondaryFlow, move: 'up', says: 'Larger secondaries need less of the turn.' },
    { field: primaryFlow, move: 'up', says: 'Larger primaries need less of the turn, and idle on a shorter pulse.' },
    { field: regulatorSetting, move: 'up', says: 'More pressure passes more fuel in the same time, and asks more of the pump.' },
  ],
  says: 'At {speed} the busier stage is open {demand} of each shaft turn; {capacity} is allowed: {margin}.',
  settle: 'Log pulse and shaft speed on one full pull to the limit: pulse over the time of one turn is the duty.',
})
