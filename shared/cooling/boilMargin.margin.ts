import { margin } from '../build/margin.ts'
import { capPressure, coolantShare, glycol, radiatorHeat } from './fields.ts'
import { at } from './point.ts'

/** Bulk of the coolant against its boiling point under the cap, in kelvin. */
export default margin({
  id: 'boil-margin',
  title: 'Boil margin of the bulk',
  theme: 'cooling',
  article: 'coolant-mixture-and-boil-margin',
  over: 'sweep',
  demand: at.coolantTemperature,
  capacity: at.boilingPoint,
  must: 'stay below',
  as: 'difference',
  tight: 15,
  shortBy: ['coolant-temperature'],
  rests: [capPressure, glycol, radiatorHeat, coolantShare],
  remedies: [
    { field: capPressure, move: 'up', says: 'A cap that opens later, if hoses and header tank are rated for it.' },
    { field: radiatorHeat, move: 'up', says: 'A radiator with a higher rated heat.' },
    { field: glycol, move: 'up', says: 'More glycol, which boils later and carries less.' },
  ],
  says: 'At {speed} the bulk of the coolant stands at {demand} and boils at {capacity} under the cap: {margin}. Metal around the plugs is hotter, and that is not in this number.',
  settle: 'Test the cap on a pump, the mixture with a refractometer, and log coolant temperature on a hot day.',
})
