import { calculation } from '../calculation/calculation.ts'
import { driverCurrentOf } from './driverCurrentOf.ts'
import { voltage } from '../spark/fields.ts'
import { ballast, coil, perDriver } from './fields.ts'
import { at } from './point.ts'

export default calculation({
  id: 'driver-current',
  title: 'Injector driver current',
  theme: 'fuel',
  asks: 'What current does one output of the engine controller carry?',
  article: 'what-an-injector-rating-means',
  cautions: ['electrical', 'fuel-vapour', 'model-only'],
  in: { voltage, coil, series: ballast, injectors: perDriver },
  out: { current: at.driverCurrent },
  curve: ['coil', 'current'],
  answer: ({ voltage, coil: resistance, series, injectors }) => ({ current: driverCurrentOf({ voltage, coil: resistance, series, injectors }) }),
  says: () => 'At {voltage} one output carries {current} once the coils have filled. Compare it with the rating of one output in the controller’s sheet.',
  leavesOut: 'Drivers that chop the current after a first peak, warm coils (less current), and the voltage spike at switching off.',
})
