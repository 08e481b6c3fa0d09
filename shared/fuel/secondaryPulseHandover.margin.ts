import { margin } from '../build/margin.ts'
import { handoverStart, secondaryDeadTime, secondaryFlow, secondarySmallestPulse } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'secondary-pulse-handover',
  title: 'Secondary pulse at hand-over',
  theme: 'fuel',
  article: 'two-stages-idle-tip-in-hand-over',
  over: 'sweep',
  demand: at.secondaryPulseAtHandover,
  capacity: at.secondarySmallestPulse,
  must: 'stay above',
  as: 'share',
  tight: 0.1,
  rests: [secondaryFlow, secondaryDeadTime, secondarySmallestPulse],
  remedies: [
    { field: handoverStart, move: 'up', says: 'A later hand-over comes at more fuel per charge.' },
    { field: secondaryFlow, move: 'down', says: 'Smaller secondaries stay open longer for the same share.' },
    { field: secondarySmallestPulse, move: 'down', says: 'Injectors that repeat from a shorter pulse on.' },
  ],
  says: 'Where the secondaries come in, their full share is a pulse of {demand} at {speed}; their shots repeat from {capacity} on: {margin}.',
  settle: 'Weigh a thousand shots of one secondary at the hand-over pulse, three times: the three weights tell whether it repeats.',
})
