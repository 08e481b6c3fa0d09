import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { countsOfReading, manifoldPressure, readingStep } from './quantities.ts'

/** Smallest change of pressure that a controller can tell apart. */
export const about = {
  name: 'Step of a sensor’s reading',
  in: { lowest: role(manifoldPressure, 'p_lo', 'Lowest pressure the sensor reads'), highest: role(manifoldPressure, 'p_hi', 'Highest pressure the sensor reads'), counts: countsOfReading },
  out: readingStep,
  equation: '(highest - lowest) / counts',
  source: ['definition', 'span over steps'],
  notes: 'Sensor and converter over the same voltages. A sensor that uses 0.5 to 4.5 V of a 5 V converter leaves a fifth of the steps unused.',
} as const satisfies About

export const sensorStep = formula<typeof about>('sensor-step', {}, ({ lowest, highest, counts }) => (highest - lowest) / counts)
