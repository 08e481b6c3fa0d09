import { margin } from '../build/margin.ts'
import { pumpNumber, pumpRatedFlow, pumpSecondFlow, pumpWiringDrop } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'fuel-pump-flow',
  title: 'Pump flow',
  theme: 'fuel',
  article: 'pump-regulator-and-voltage',
  over: 'sweep',
  demand: at.volumeFlow,
  capacity: at.pumpFlow,
  must: 'stay below',
  as: 'share',
  tight: 0.15,
  rests: [pumpRatedFlow, pumpSecondFlow, pumpWiringDrop],
  remedies: [
    { field: pumpRatedFlow, move: 'up', says: 'A larger pump.' },
    { field: pumpNumber, move: 'up', says: 'A second pump beside the first.' },
    { field: pumpWiringDrop, move: 'down', says: 'Thicker cable and a relay near the pump bring its voltage back.' },
  ],
  says: 'At {speed} the engine burns {demand}; the pump gives {capacity} at the pressure and voltage it has there: {margin}.',
  settle: 'Run the pump through the regulator, boost pressure put on its reference with a hand pump, into a measured can for half a minute, with a voltmeter at the pump.',
})
