import { formula, type About } from '../formula/formula.ts'
import { airGasConstant } from '../formula/constants.ts'
import { role } from '../quantity/quantity.ts'
import { gasFlow, gasPressure, gasTemperature, pipeVolume, shortTime } from './quantities.ts'

/** Time in which pipes that nothing leaves fill from one pressure to another. */
export const about = {
  name: 'Time until the pipes are full',
  in: {
    volume: pipeVolume, from: role(gasPressure, 'p_2', 'Pressure in the pipes'), to: role(gasPressure, 'p_s', 'Pressure at which the compressor surges'),
    temperature: gasTemperature, into: role(gasFlow, 'm_in', 'Flow into the pipes'), leaving: role(gasFlow, 'm_e', 'Flow that leaves them'),
  },
  out: shortTime,
  equation: 'volume * (to - from + abs(to - from)) / 2 / (airGasConstant * temperature * (into - leaving))',
  constants: { airGasConstant },
  source: ['derived', 'mass balance of an ideal gas in a volume, temperature held'],
  notes: 'The flow is taken as that at the start; it falls on the way, so the real time is up to twice as long.',
  sample: { into: [0.1, 1], leaving: [0.002, 0.05] },
} as const satisfies About

export const timeToSurge = formula<typeof about>('time-to-surge', {}, ({ volume, from, to, temperature, into, leaving }) => (volume * Math.max(0, to - from)) / (airGasConstant.value * temperature * (into - leaving)))
