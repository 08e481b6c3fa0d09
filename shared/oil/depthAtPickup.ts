import { type About, formula } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { oilDepth, sumpLength, sumpOil, tiltAngle } from './quantities.ts'

/** Depth of oil at a place in a box-shaped sump while the surface is tilted. */
export const about = {
  name: 'Depth of oil at the pick-up',
  in: {
    volume: sumpOil, length: role(sumpLength, 'l', 'Length of the sump along the acceleration'), width: role(sumpLength, 'b', 'Width of the sump across it'),
    place: role(sumpLength, 'x', 'Pick-up from the wall to which the oil runs'), height: role(sumpLength, 'z', 'Pick-up over the floor'), tilt: tiltAngle,
  },
  out: oilDepth,
  steps: [
    'While the tilted surface still covers the whole floor, the mean depth is volume over floor, and it falls along the sump with the tangent of the tilt.',
    'Once part of the floor lies bare, the oil is a wedge against the wall: its length follows from the volume.',
    'Beyond the wedge there is none. The height of the pick-up is taken off.',
  ],
  source: ['derived', 'conservation of volume under a flat surface'],
  notes: 'A steady acceleration: what sloshes in goes higher for a moment. Walls are taken as high enough.',
} as const satisfies About

export const depthAtPickup = formula<typeof about>('depth-at-pickup', {}, ({ volume, length, width, place, height, tilt }) => {
  const fall = Math.tan(tilt)
  const mean = volume / (length * width)
  if (fall * length <= 2 * mean) return mean + fall * (length / 2 - place) - height
  const wedge = Math.sqrt((2 * volume) / (width * fall))
  return Math.max(0, (wedge - place) * fall) - height
})
