import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { fuelTemperature } from '../fuel/quantities.ts'
import { courseTime, metalTemperatureOf, railConductanceOf, storedPerKelvin } from './quantities.ts'

/** Temperature of a part that warms through one conductance from something that stays warm. */
export const about = {
  name: 'Rail temperature after a stop',
  in: { start: role(fuelTemperature, 'T_f0', 'Rail when the engine stops'), source: role(metalTemperatureOf, 'T_s', 'Engine beneath it'), conductance: railConductanceOf, capacity: role(storedPerKelvin, 'C_r', 'Heat capacity of rail and fuel'), time: courseTime },
  out: fuelTemperature,
  equation: 'source + (start - source) * exp(-conductance * time / capacity)',
  source: ['incropera', 'chapter 5: lumped capacitance'],
  notes: 'The engine is taken to stay as warm as it was, and the rail to lose nothing: both on the hot side.',
} as const satisfies About

export const soakedTemperature = formula<typeof about>('soaked-temperature', {}, ({ start, source, conductance, capacity, time }) => source + (start - source) * Math.exp((-conductance * time) / capacity))
