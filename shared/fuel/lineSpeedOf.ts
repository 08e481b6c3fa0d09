import { formula, type About } from '../formula/formula.ts'
import { fuelVolumeFlow, lineBore, lineSpeed } from './quantities.ts'

/** Mean speed of flow in a round line. */
export const about = {
  name: 'Speed of flow in a line',
  in: { flow: fuelVolumeFlow, bore: lineBore },
  out: lineSpeed,
  equation: '4 * flow / (pi * bore^2)',
  source: ['definition', 'volume flow over the area of the bore'],
} as const satisfies About

export const lineSpeedOf = formula<typeof about>('line-speed-of', {}, ({ flow, bore }) => (4 * flow) / (Math.PI * bore ** 2))
