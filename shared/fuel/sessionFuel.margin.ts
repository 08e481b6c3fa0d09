import { margin } from '../build/margin.ts'
import { sessionMinutes, sessionShare, tank, tankUnusable } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'session-fuel',
  title: 'Fuel for a session',
  theme: 'fuel',
  article: 'how-much-fuel',
  over: 'sweep',
  demand: at.sessionFuel,
  capacity: at.usableFuel,
  must: 'stay below',
  as: 'share',
  tight: 0.15,
  rests: [tank, tankUnusable, sessionShare],
  remedies: [
    { field: tankUnusable, move: 'down', says: 'A surge pot, or a pick-up with baffles around it.' },
    { field: sessionMinutes, move: 'down', says: 'A shorter session.' },
    { field: tank, move: 'up', says: 'A larger tank.' },
  ],
  says: 'Reckoned from the greatest flow, at {speed}, a session takes {demand} of the {capacity} that reach the pump: {margin}.',
  settle: 'Fill up before and after one session: what goes in is what it took.',
})
