import { type Kind } from '../quantity/kinds.ts'
import { type Form, type Spread } from './spread.ts'

/** A way to measure, and how far it may be out: so much, and so much of the reading. */
export type Method = { readonly id: string; readonly says: string; readonly kinds: readonly Kind[]; readonly by: number; readonly share: number; readonly form: Form; readonly source: string }

const practice = 'common practice, no source'
const pressures: readonly Kind[] = ['pressure', 'gaugePressure', 'pressureDifference']
const temperatures: readonly Kind[] = ['temperature', 'temperatureDifference']

/**
 * Ways to measure with what each is out by, SI. Limits of error of an instrument are rectangular, what repeated readings tell is normal. A gauge’s
 * class is a share of its full scale: it is taken to be read at half of it.
 */
export const methods: readonly Method[] = [
  { id: 'rule', says: 'steel rule', kinds: ['length'], by: 0.5e-3, share: 0, form: 'rectangular', source: practice },
  { id: 'caliper', says: 'caliper', kinds: ['length'], by: 0.03e-3, share: 0, form: 'rectangular', source: 'ISO 13385-1, maximum permissible error of most, from memory' },
  { id: 'micrometer', says: 'micrometer', kinds: ['length'], by: 0.004e-3, share: 0, form: 'rectangular', source: 'ISO 3611, to 100 mm, from memory' },
  { id: 'bore-gauge', says: 'bore gauge set by a micrometer', kinds: ['length'], by: 0.006e-3, share: 0, form: 'normal', source: practice },
  { id: 'plastic-strip', says: 'plastic strip', kinds: ['length'], by: 0.013e-3, share: 0, form: 'normal', source: practice },
  { id: 'burette', says: 'burette', kinds: ['volume'], by: 0.3e-6, share: 0.002, form: 'normal', source: practice },
  { id: 'cylinder', says: 'measuring cylinder', kinds: ['volume'], by: 0, share: 0.01, form: 'rectangular', source: practice },
  { id: 'parts-balance', says: 'parts balance', kinds: ['mass'], by: 1e-3, share: 0.0005, form: 'rectangular', source: practice },
  { id: 'car-scales', says: 'wheel scales', kinds: ['mass'], by: 1, share: 0.005, form: 'rectangular', source: practice },
  { id: 'gauge-1', says: 'dial gauge of class 1', kinds: pressures, by: 0, share: 0.02, form: 'rectangular', source: 'EN 837-1, 1 % of full scale read at half of it, from memory' },
  { id: 'gauge-2.5', says: 'dial gauge of class 2.5', kinds: pressures, by: 0, share: 0.05, form: 'rectangular', source: 'EN 837-1, 2.5 % of full scale read at half of it, from memory' },
  { id: 'sensor', says: 'pressure sensor and logger', kinds: pressures, by: 0, share: 0.015, form: 'rectangular', source: practice },
  { id: 'thermocouple-1', says: 'thermocouple of class 1', kinds: temperatures, by: 1.5, share: 0, form: 'rectangular', source: 'IEC 60584-1, type K to 375 °C, from memory' },
  { id: 'thermocouple-2', says: 'thermocouple of class 2', kinds: temperatures, by: 2.5, share: 0, form: 'rectangular', source: 'IEC 60584-1, type K to 333 °C, from memory' },
  { id: 'thermistor', says: 'sender of the car', kinds: temperatures, by: 3, share: 0, form: 'rectangular', source: practice },
  { id: 'flow-bench', says: 'flow bench', kinds: ['volumeFlow', 'massFlow'], by: 0, share: 0.02, form: 'normal', source: practice },
  { id: 'bucket', says: 'measuring vessel and stopwatch', kinds: ['volumeFlow'], by: 0, share: 0.03, form: 'normal', source: practice },
  { id: 'oscilloscope', says: 'oscilloscope', kinds: ['time'], by: 0.02e-3, share: 0.01, form: 'normal', source: practice },
  { id: 'voltmeter', says: 'multimeter', kinds: ['voltage'], by: 0.02, share: 0.005, form: 'rectangular', source: practice },
  { id: 'clamp', says: 'current clamp', kinds: ['current'], by: 0.1, share: 0.02, form: 'rectangular', source: practice },
  { id: 'four-wires', says: 'four-wire resistance', kinds: ['resistance'], by: 0.002, share: 0.01, form: 'rectangular', source: practice },
  { id: 'spring-scale', says: 'spring scale or press', kinds: ['force'], by: 0, share: 0.03, form: 'rectangular', source: practice },
  { id: 'dyno', says: 'dynamometer', kinds: ['torque', 'power'], by: 0, share: 0.03, form: 'normal', source: practice },
]

/** What a number of this size may be out by when it was measured like this. */
export const spreadBy = ({ by, share, form }: Method, value: number): Spread => ({ form, half: by + share * Math.abs(value) })
export const methodsFor = (kind: Kind): readonly Method[] => methods.filter((m) => m.kinds.includes(kind))
