import { calculation } from '../calculation/calculation.ts'
import { siteAirPressure } from '../engine/fields.ts'
import { absoluteRailPressure } from './absoluteRailPressure.ts'
import { fuelVapour37, heldRailPressure, soakTemperature } from './fields.ts'
import { at } from './point.ts'
import { linePressureLoss } from './quantities.ts'
import { role } from '../quantity/quantity.ts'
import { trueVapourPressure } from './trueVapourPressure.ts'
import { vapourReserveOf } from './vapourReserveOf.ts'

export default calculation({
  id: 'vapour-margin',
  title: 'Vapour in the rail after a hot stop',
  theme: 'fuel',
  asks: 'Does the fuel boil in the rail while the hot engine stands?',
  article: 'keeping-heat-and-pulses-out-of-the-fuel',
  cautions: ['fuel-vapour', 'hot-metal', 'pressurised-fuel', 'model-only'],
  in: { reid: fuelVapour37, temperature: soakTemperature, held: heldRailPressure, outside: siteAirPressure },
  out: { vapour: at.vapourPressure, pressure: at.heldPressure, reserve: role(linePressureLoss, 'Δp_v', 'Reserve against boiling') },
  curve: ['temperature', 'vapour'],
  answer({ reid, temperature, held, outside }) {
    const vapour = trueVapourPressure({ reid, temperature })
    const pressure = absoluteRailPressure({ rail: held, outside })
    return { vapour, pressure, reserve: vapourReserveOf({ held: pressure, vapour }) }
  },
  says: ({ reserve }) => reserve < 0
    ? 'At {temperature} the fuel boils at {vapour}, and the rail holds only {pressure}: vapour forms, and the restart is lean until it is swept out.'
    : 'At {temperature} the fuel boils at {vapour}; the rail holds {pressure}, which leaves {reserve}.',
  leavesOut: 'The pump’s suction side, where pressure is lowest; temperatures beyond 60 °C are beyond the source’s range and an extrapolation.',
})
