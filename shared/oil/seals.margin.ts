import { margin } from '../build/margin.ts'
import { premix } from '../fuel/fields.ts'
import { meteredFull, meteredIdle, referenceDose } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'seal-oil', title: 'Oil for the seals', theme: 'oil', article: 'metered-premixed-or-both', over: 'sweep',
  demand: referenceDose, capacity: at.sealDose, must: 'stay below', as: 'share', tight: 0.25, best: 'tight',
  words: { tight: 'above the reference', short: 'below the reference' }, rests: [referenceDose, meteredFull],
  remedies: [
    { field: premix, move: 'up', says: 'More oil in the fuel.' },
    { field: meteredFull, move: 'up', says: 'A larger stroke of the metering pump.' },
    { field: meteredIdle, move: 'up', says: 'More from the metering pump at rest.' },
  ],
  says: 'At {speed} the seals get {capacity} where you chose {demand} as reference: {margin}. No published requirement exists, and premix brings nothing while the fuel is cut.',
  settle: 'Weigh the oil used over a tank of fuel, and look at seal and housing wear at the next opening.',
})
