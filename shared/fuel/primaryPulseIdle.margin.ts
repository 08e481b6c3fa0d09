import { margin } from '../build/margin.ts'
import { primaryDeadTime, primaryFlow, primarySmallestPulse, regulatorSetting } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'primary-pulse-idle',
  title: 'Primary pulse at idle',
  theme: 'fuel',
  article: 'two-stages-idle-tip-in-hand-over',
  over: 'idle',
  demand: at.primaryPulse,
  capacity: at.primarySmallestPulse,
  must: 'stay above',
  as: 'share',
  tight: 0.1,
  rests: [primaryFlow, primaryDeadTime, primarySmallestPulse],
  remedies: [
    { field: primaryFlow, move: 'down', says: 'Smaller primaries stay open longer for the same idle fuel.' },
    { field: regulatorSetting, move: 'down', says: 'A lower setting makes every pulse longer.' },
    { field: primarySmallestPulse, move: 'down', says: 'Injectors that repeat from a shorter pulse on.' },
  ],
  says: 'At idle a primary is open {demand}; its shots repeat from {capacity} on: {margin}.',
  settle: 'Weigh a thousand shots of one primary at the idle pulse, three times: the three weights tell whether it repeats.',
})
