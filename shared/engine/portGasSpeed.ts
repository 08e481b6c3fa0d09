import { formula, type About } from '../formula/formula.ts'
import { displacement, portSpeed, timeArea } from './quantities.ts'

/** Mean speed of the gas in a port that has to pass one chamber’s displacement while it is open. */
export const about = {
  name: 'Mean gas speed in a port',
  in: { displacement, timeArea },
  out: portSpeed,
  equation: 'displacement / timeArea',
  source: ['derived', 'volume over area and time'],
  notes: 'A measure for comparing ports, at the density of the gas in the port. The gas at its fastest is about twice as fast; where that nears half the speed of sound, filling falls: common practice, no source.',
} as const satisfies About

export const portGasSpeed = formula<typeof about>('port-gas-speed', {}, ({ displacement: volume, timeArea: area }) => volume / area)
