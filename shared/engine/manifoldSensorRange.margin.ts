import { margin } from '../build/margin.ts'
import { boostTargetCurve } from '../boost/fields.ts'
import { engineMapSensorMax } from './fields.ts'
import { at } from './point.ts'

/** A sensor at the end of its range reads its last value, and the engine runs lean without a sign. */
export default margin({
  id: 'manifold-sensor-range', title: 'Manifold pressure sensor', theme: 'engine', article: 'the-order-of-decisions', over: 'sweep',
  demand: at.manifold, capacity: engineMapSensorMax, must: 'stay below', as: 'share', tight: 0.05, rests: [engineMapSensorMax],
  remedies: [
    { field: engineMapSensorMax, move: 'up', says: 'Fit a sensor with a wider range and calibrate it' },
    { field: boostTargetCurve, move: 'down', says: 'Ask for less boost' },
  ],
  says: 'The manifold reaches {demand} at {speed}; the sensor reads up to {capacity}, which leaves {margin}. Overshoot in a gear change comes on top.',
  settle: 'Read the range on the sensor’s sheet, and compare its reading with a gauge at the highest boost you use.',
})
