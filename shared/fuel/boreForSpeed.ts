import { formula, type About } from '../formula/formula.ts'
import { fuelVolumeFlow, lineBore, lineSpeed } from './quantities.ts'

/** Bore in which a flow keeps to a speed. */
export const about = {
  name: 'Bore for a speed of flow',
  in: { flow: fuelVolumeFlow, speed: lineSpeed },
  out: lineBore,
  equation: 'sqrt(4 * flow / (pi * speed))',
  source: ['definition', 'volume flow over the area of the bore'],
} as const satisfies About

export const boreForSpeed = formula<typeof about>('bore-for-speed', {}, ({ flow, speed }) => Math.sqrt((4 * flow) / (Math.PI * speed)))
