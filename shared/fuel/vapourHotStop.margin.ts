import { margin } from '../build/margin.ts'
import { kPa } from '../quantity/si.ts'
import { fuelVapour37, heldRailPressure, soakTemperature } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'vapour-hot-stop',
  title: 'Vapour in the rail after a hot stop',
  theme: 'fuel',
  article: 'keeping-heat-and-pulses-out-of-the-fuel',
  over: 'build',
  demand: at.vapourPressure,
  capacity: at.heldPressure,
  must: 'stay below',
  as: 'difference',
  tight: kPa(40),
  rests: [heldRailPressure, soakTemperature, fuelVapour37],
  remedies: [
    { field: soakTemperature, move: 'down', says: 'A spacer under the rail, a heat shield, or a fan that runs on.' },
    { field: heldRailPressure, move: 'up', says: 'A check valve at the pump and a regulator that seals hold the pressure longer.' },
    { field: fuelVapour37, move: 'down', says: 'Summer fuel, or fuel of lower vapour pressure.' },
  ],
  says: 'In a rail soaked warm after a hot stop the fuel boils at {demand}; the rail holds {capacity}: {margin}.',
  settle: 'After a hot run, read rail pressure and the temperature of the rail for fifteen minutes.',
})
