import { margin } from '../build/margin.ts'
import { coolantLimit, coolantShare, pumpFlow, radiatorHeat, ramRecovery, sustainedShare } from './fields.ts'
import { at } from './point.ts'

/** Coolant leaving the engine against the limit its builder accepts, in kelvin. */
export default margin({
  id: 'coolant-temperature',
  title: 'Coolant temperature',
  theme: 'cooling',
  article: 'sizing-the-radiator',
  over: 'sweep',
  demand: at.coolantTemperature,
  capacity: coolantLimit,
  must: 'stay below',
  as: 'difference',
  tight: 8,
  rests: [radiatorHeat, coolantShare, ramRecovery, sustainedShare],
  remedies: [
    { field: radiatorHeat, move: 'up', says: 'A radiator with a higher rated heat at the same flows.' },
    { field: ramRecovery, move: 'up', says: 'Ducts that lose less, with a free way out.' },
    { field: pumpFlow, move: 'up', says: 'More coolant flow.' },
  ],
  says: 'Held at {speed} with the sustained share of full load, the coolant leaves the engine at {demand}; you accept {capacity}: {margin}.',
  settle: 'One steady run: coolant temperature out and in, car speed and air temperature, until nothing changes any more.',
})
