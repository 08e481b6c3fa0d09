import { margin } from '../build/margin.ts'
import { pumpRatedFlow, regulatorFullFlow, returnBore } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'regulator-bypass-idle',
  title: 'Regulator bypass at idle',
  theme: 'fuel',
  article: 'pump-regulator-and-voltage',
  over: 'idle',
  demand: at.bypassFlow,
  capacity: at.bypassCapacity,
  must: 'stay below',
  as: 'share',
  tight: 0.15,
  rests: [regulatorFullFlow, pumpRatedFlow],
  remedies: [
    { field: returnBore, move: 'up', says: 'A wider return takes less of the pressure to be held.' },
    { field: regulatorFullFlow, move: 'up', says: 'A regulator with a larger seat.' },
    { field: pumpRatedFlow, move: 'down', says: 'A smaller pump, or one whose speed is lowered at idle.' },
  ],
  says: 'At idle {demand} has to go back to the tank; the open regulator and its return pass {capacity} before the rail rises: {margin}.',
  settle: 'Read the rail gauge at idle with the reference hose off: a rail above its setting means that the bypass is full.',
})
