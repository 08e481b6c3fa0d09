import { formula, type About } from '../formula/formula.ts'
import { portArea, portHeight, portWidth } from './quantities.ts'

/** Area of a port that is fully open. */
export const about = {
  name: 'Whole area of a port',
  in: { width: portWidth, height: portHeight },
  out: portArea,
  equation: 'width * height',
  source: ['definition', 'a rectangle'],
  notes: 'Take off what round corners cost: a radius r in all four costs 0.86 r².',
} as const satisfies About

export const portWholeArea = formula<typeof about>('port-whole-area', {}, ({ width, height }) => width * height)
