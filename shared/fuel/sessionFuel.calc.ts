import { calculation } from '../calculation/calculation.ts'
import { sessionMinutes, sessionShare, tank, tankUnusable } from './fields.ts'
import { at } from './point.ts'
import { sessionTime } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { sessionFuelOf } from './sessionFuelOf.ts'
import { sessionTimeOf } from './sessionTimeOf.ts'
import { usableFuelOf } from './usableFuelOf.ts'

export default calculation({
  id: 'session-fuel',
  title: 'Fuel for a session',
  theme: 'fuel',
  asks: 'Does the tank last a session?',
  article: 'how-much-fuel',
  cautions: ['fuel-vapour', 'model-only'],
  in: { fullFlow: at.volumeFlow, share: sessionShare, time: sessionMinutes, tank, unusable: tankUnusable },
  out: { fuel: at.sessionFuel, usable: at.usableFuel, lasts: role(sessionTime, 't_u', 'Time on the usable fuel') },
  curve: ['time', 'fuel'],
  mayLack: ['lasts'],
  answer({ fullFlow, share, time, tank: volume, unusable }) {
    const usable = usableFuelOf({ tank: volume, unusable })
    return { fuel: sessionFuelOf({ fullFlow, share, time }), usable, lasts: sessionTimeOf({ usable, fullFlow, share }) }
  },
  says: ({ fuel, usable }) => fuel > usable
    ? 'A session of {time} takes {fuel}, more than the {usable} that reach the pump: it ends after {lasts}.'
    : 'A session of {time} takes {fuel} of the {usable} that reach the pump, which would last {lasts}.',
  leavesOut: 'The warm-up and the way back, and that the pick-up may draw air earlier in long corners.',
})
