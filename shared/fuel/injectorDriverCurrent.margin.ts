import { margin } from '../build/margin.ts'
import { ballast, coil, driverRating, perDriver } from './fields.ts'
import { at } from './point.ts'

export default margin({
  id: 'injector-driver-current',
  title: 'Driver current of the injectors',
  theme: 'fuel',
  article: 'what-an-injector-rating-means',
  over: 'build',
  demand: at.driverCurrent,
  capacity: driverRating,
  must: 'stay below',
  as: 'share',
  tight: 0.15,
  rests: [driverRating, coil],
  remedies: [
    { field: ballast, move: 'up', says: 'A ballast resistor for each injector; dead time grows with it.' },
    { field: coil, move: 'up', says: 'Injectors of higher coil resistance.' },
    { field: perDriver, move: 'down', says: 'One output for each injector.' },
  ],
  says: 'One output carries {demand} while its injectors are held open; it may carry {capacity}: {margin}.',
  settle: 'An ohmmeter across each injector, and the sheet of the engine controller for the rating of one output.',
})
