import { type WordsFor } from '../quantity/quantity.ts'
import { type Reasons } from '../build/field.ts'
import type * as quantities from './quantities.ts'
import type * as fields from './fields.ts'

/** What each quantity of fuel means and how to measure it. */
export const words = {
  injectorFlow: { means: 'Volume of fuel an injector passes in a given time while it is held open.', measure: 'Hold it open on a bench with the rated fluid at the rated pressure and weigh what comes out over a minute.' },
  nozzleDrop: { means: 'Rail pressure less manifold pressure: what pushes fuel through the open injector.', measure: 'One gauge on the rail and one on the manifold, read at the same moment.' },
  railPressure: { means: 'Pressure in the fuel rail, as a gauge shows it.', measure: 'A gauge or sensor at the end of the rail farthest from the feed.' },
  pulseWidth: { means: 'Time for which the injector is commanded open for one charge, dead time included.', measure: 'Read from the engine controller, or from the coil voltage with an oscilloscope.' },
  dutyCycle: { means: 'Pulse width as a share of the time there is for it.', measure: 'Pulse width divided by the time of one shaft turn.' },
  deadTime: { means: 'What an injector loses at each opening before full flow, less what it gains in closing.', measure: 'Weigh fuel at several pulse widths and battery voltages; the line through them meets zero flow at the dead time.' },
  fuelPerCharge: { means: 'Mass of fuel that one charge of one rotor receives.', measure: 'Fuel flow divided by rotors and shaft speed.' },
  fuelDensity: { means: 'Mass of a volume of the fuel.', measure: 'A hydrometer and a thermometer, or the supplier’s sheet.' },
} satisfies WordsFor<typeof quantities>

/** Why each field starts where it does. */
export const reasons = {
  primaryFlow: 'An invented middle-sized injector: enter the flow your own set was measured at.',
  primaryRatedDrop: 'Three bar is the pressure at which most sets are flowed: common practice, no source.',
  primaryDeadTime: 'A middle figure at 14 V: common practice, no source. Your injector’s own sheet replaces it.',
} satisfies Reasons<typeof fields>
