import { margin } from '../build/margin.ts'
import { carSpeed, coolantLimit, coolantShare, fanFreeFlow, glycol, pumpFlow, radiatorAirFlow, radiatorCoolantFlow, radiatorHeat, ramRecovery, sustainedShare } from './fields.ts'
import { at } from './point.ts'

/** Coolant leaving the engine against the limit its builder accepts, in kelvin. */
export default margin({
  id: 'coolant-temperature',
  title: 'Coolant temperature',
  theme: 'cooling',
  article: 'where-the-heat-goes',
  over: 'sweep',
  demand: at.coolantTemperature,
  capacity: coolantLimit,
  must: 'stay below',
  as: 'difference',
  tight: 8,
  rests: [radiatorHeat, radiatorAirFlow, radiatorCoolantFlow, coolantShare, pumpFlow, ramRecovery, sustainedShare, carSpeed, glycol, fanFreeFlow],
  remedies: [
    { field: radiatorHeat, move: 'up', says: 'a radiator with a higher rated heat at the same flows' },
    { field: ramRecovery, move: 'up', says: 'ducts that lose less, with a free way out' },
    { field: pumpFlow, move: 'up', says: 'more coolant flow' },
  ],
  says: 'Held at {speed} with the sustained share of full load, the coolant leaves the engine at {demand}; you accept {capacity}, {margin} more.',
  settle: 'One steady run: coolant temperature out and in, car speed and air temperature, until nothing changes any more.',
})
