import { formula, type About } from '../formula/formula.ts'
import { coilResistance, driverCurrent, injectorsPerDriver, pumpVoltage, seriesResistance } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

/** Current that a driver carries when its injectors are held open long enough for the coils to fill. */
export const about = {
  name: 'Current of an injector driver',
  in: { voltage: role(pumpVoltage, 'U', 'System voltage'), coil: coilResistance, series: seriesResistance, injectors: injectorsPerDriver },
  out: driverCurrent,
  equation: 'injectors * voltage / (coil + series)',
  source: ['definition', 'law of Ohm; injectors of one driver side by side, each with its own series resistance'],
  notes: 'A driver that chops the current after a first peak limits it to its own setting; then this is what it limits from.',
} as const satisfies About

export const driverCurrentOf = formula<typeof about>('driver-current-of', {}, ({ voltage, coil, series, injectors }) => (injectors * voltage) / (coil + series))
